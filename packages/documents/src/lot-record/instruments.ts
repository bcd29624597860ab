import type { InstrumentData } from '../entry-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table } from '../page/table';
import { given, words } from '../page/words';
import { checkInWords } from '../parts/check-in-words';

export function instruments(sheet: Sheet, all: InstrumentData[]): void {
  if (!all.length) return;
  const { say } = sheet;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, say('instruments')));
  const table = new Table(sheet, [
    { head: say('instrument'), share: 1 },
    { head: say('check-in-force'), share: 2.2 },
  ]);
  for (const { name, kind, checks, between, flagged } of all) {
    const told = checks.map((check) => words('body', checkInWords(check, sheet)));
    const more = between ? [words('small', `${say('more-checks', { count: between })}.`)] : [];
    table.add({
      cells: [
        given(words('body', name), kind && words('small', kind)),
        told.length > 0 ? [...told, ...more] : [words('slanted', say('no-check-known'))],
      ],
      under: flagged.map((flag) => words('smallInk', { mark: 'flag' }, { text: `  ${flag}`, style: 'smallStrong' })),
    });
  }
  table.end();
}
