import type { LotInputData, LotRecordData } from '../lot-record-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import type { WallClock } from '../page/wall-clock';
import { given, words } from '../page/words';
import { entered } from '../parts/entered';
import { Footnotes } from '../parts/footnotes';
import { remarksOn } from '../parts/remarks';

/** What went in, where it came from, and what was cut away of it. */
export function inputs(sheet: Sheet, { inputs: all }: LotRecordData): void {
  sheet.space(10);
  sheet.hold(heading(sheet.pen, sheet.area, 'Inputs', { aside: all.length ? '' : 'none recorded' }));
  if (!all.length) return sheet.put();
  const table = new Table(sheet, [
    { head: 'Item', share: 1.5 },
    { head: 'Supplier lot', share: 1 },
    { head: 'Taken', width: 58, align: 'right' },
    { head: 'Trimmings', width: 54, align: 'right' },
    { head: 'Weighed by', width: 74 },
  ]);
  const footnotes = new Footnotes();
  for (const input of all) table.add(entryOf(input, footnotes, sheet.clock));
  table.end();
  sheet.put(...footnotes.legend(sheet));
}

function entryOf(input: LotInputData, footnotes: Footnotes, clock: WallClock): Entry {
  const { item, supplier, supplierLot, establishmentNumber, reworkOf, receivedAt, taken, trimmings, by, at } = input;
  return {
    at,
    flags: footnotes.lettersOf(input.flags),
    cells: [
      given(words('body', item), supplier && words('small', supplier)),
      given(
        words('body', reworkOf ? `rework of ${reworkOf}` : (supplierLot ?? 'not given')),
        establishmentNumber && words('small', `Est. ${establishmentNumber}`),
        receivedAt !== undefined && words('small', `received ${clock.day(receivedAt)}`),
      ),
      [words('body', taken)],
      [words('body', trimmings ?? '–')],
      [words('body', by)],
    ],
    under: [...entered(input, clock), ...remarksOn({ amendments: input.amendments }, clock)],
  };
}
