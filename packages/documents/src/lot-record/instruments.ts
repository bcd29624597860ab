import type { InstrumentData } from '../entry-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table } from '../page/table';
import { given, words } from '../page/words';
import { entered } from '../parts/entered';

/** What it was measured with, and whether that could be trusted. */
export function instruments(sheet: Sheet, all: InstrumentData[]): void {
  if (!all.length) return;
  const { clock } = sheet;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, 'Instruments'));
  const table = new Table(sheet, [
    { head: 'Instrument', share: 1 },
    { head: 'Last calibration', share: 1.7 },
    { head: 'By', width: 74 },
  ]);
  for (const { name, kind, calibrated, overdue } of all) {
    table.add({
      cells: [
        given(words('body', name), kind && words('small', kind)),
        calibrated
          ? [words('body', clock.dayAndTime(calibrated.at)), words('small', calibrated.result), ...entered(calibrated, clock)]
          : [words('slanted', 'never calibrated here')],
        calibrated ? [words('body', calibrated.by)] : [],
      ],
      under: overdue ? [words('smallInk', { mark: 'flag' }, { text: `  ${overdue}`, style: 'smallStrong' })] : [],
    });
  }
  table.end();
}
