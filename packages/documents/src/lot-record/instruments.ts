import type { InstrumentData } from '../entry-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table } from '../page/table';
import { given, words } from '../page/words';
import { checkInWords, moreChecks, noCheck } from '../parts/check-in-words';

/** What it was measured with, and whether that could be trusted. */
export function instruments(sheet: Sheet, all: InstrumentData[]): void {
  if (!all.length) return;
  const { clock } = sheet;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, 'Instruments'));
  const table = new Table(sheet, [
    { head: 'Instrument', share: 1 },
    { head: 'Check in force when it was used', share: 2.2 },
  ]);
  for (const { name, kind, checks, between, flagged } of all) {
    const told = checks.map((check) =>
      words(
        'body',
        checkInWords(check, (at) => clock.dayAndTime(at)),
      ),
    );
    const more = between ? [words('small', `${moreChecks(between)}.`)] : [];
    table.add({
      cells: [given(words('body', name), kind && words('small', kind)), told.length > 0 ? [...told, ...more] : [words('slanted', noCheck)]],
      under: flagged.map((flag) => words('smallInk', { mark: 'flag' }, { text: `  ${flag}`, style: 'smallStrong' })),
    });
  }
  table.end();
}
