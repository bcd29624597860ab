import type { LotRecordData } from '../lot-record-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table } from '../page/table';
import { amendmentInWords } from '../parts/remarks';

export function corrections(sheet: Sheet, { corrections: all = [] }: LotRecordData): void {
  if (!all.length) return;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, sheet.say('corrections')));
  const table = new Table(sheet, [{ head: sheet.say('what-was-corrected'), share: 1 }]);
  for (const amendment of all) table.add({ at: amendment.at, cells: [[amendmentInWords(amendment, sheet)]] });
  table.end();
}
