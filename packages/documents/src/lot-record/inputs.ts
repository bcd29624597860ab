import type { LotInputData, LotRecordData } from '../lot-record-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Entry } from '../page/table';
import type { Telling } from '../page/telling';
import { given, words } from '../page/words';
import { entered } from '../parts/entered';
import { Footnotes } from '../parts/footnotes';
import { remarksOn } from '../parts/remarks';

export function inputs(sheet: Sheet, { inputs: all }: LotRecordData): void {
  const { say } = sheet;
  sheet.space(10);
  sheet.hold(heading(sheet.pen, sheet.area, say('inputs'), { aside: all.length ? '' : say('none-recorded-aside') }));
  if (!all.length) return sheet.put();
  const table = new Table(sheet, [
    { head: say('item'), share: 1.5 },
    { head: say('supplier-lot'), share: 1 },
    { head: say('taken'), width: 58, align: 'right' },
    { head: say('trimmings'), width: 54, align: 'right' },
    { head: say('weighed-by'), width: 74 },
  ]);
  const footnotes = new Footnotes();
  for (const input of all) table.add(entryOf(input, footnotes, sheet));
  table.end();
  sheet.put(...footnotes.legend(sheet));
}

function entryOf(input: LotInputData, footnotes: Footnotes, telling: Telling): Entry {
  const { say, clock } = telling;
  const { item, supplier, supplierLot, establishmentNumber, reworkOf, receivedAt, taken, trimmings, by, at } = input;
  return {
    at,
    flags: footnotes.lettersOf(input.flags),
    cells: [
      given(words('body', item), supplier && words('small', supplier)),
      given(
        words('body', reworkOf ? say('rework-of', { lot: reworkOf }) : (supplierLot ?? say('not-given'))),
        establishmentNumber && words('small', say('est-number', { number: establishmentNumber })),
        receivedAt !== undefined && words('small', say('received-on', { day: clock.day(receivedAt) })),
      ),
      [words('body', taken)],
      [words('body', trimmings ?? '–')],
      [words('body', by)],
    ],
    under: [...entered(input, telling), ...remarksOn({ amendments: input.amendments }, telling)],
  };
}
