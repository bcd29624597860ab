import type { LotRecordData } from '../lot-record-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { given, words } from '../page/words';
import { entered } from '../parts/entered';

/** Where the lot went: packages, shipments, losses, and what the weights add up to. */
export function packing(sheet: Sheet, { packages, shipments, losses, balance }: LotRecordData): void {
  section(
    sheet,
    'Packages',
    [
      { head: 'Package code', share: 1.4 },
      { head: 'Count', width: 38, align: 'right' },
      { head: 'Net each', width: 52, align: 'right' },
      { head: 'Total', width: 54, align: 'right' },
      { head: 'Use by', width: 68 },
      { head: 'Packed by', width: 74 },
    ],
    packages.map(({ at, enteredAt, by, code, count, net, total, useBy, label }) => ({
      at,
      under: entered({ at, enteredAt }, sheet.clock),
      cells: [
        given(words('body', code), label && words('small', label)),
        [words('body', String(count))],
        [words('body', net)],
        [words('strong', total)],
        [words('body', useBy ?? 'none')],
        [words('body', by)],
      ],
    })),
  );

  section(
    sheet,
    'Shipments',
    [
      { head: 'Customer', share: 1.2 },
      { head: 'What', share: 1.2 },
      { head: 'Document', share: 0.7 },
      { head: 'Shipped by', width: 74 },
    ],
    shipments.map(({ at, enteredAt, by, customer, what, document, note }) => ({
      at,
      cells: [[words('body', customer)], [words('body', what)], [words('body', document ?? '–')], [words('body', by)]],
      under: [...(note ? [words('small', note)] : []), ...entered({ at, enteredAt }, sheet.clock)],
    })),
  );

  section(
    sheet,
    'Losses',
    [
      { head: 'Loss', share: 1 },
      { head: 'Quantity', width: 62, align: 'right' },
      { head: 'Why', share: 1.2 },
      { head: 'Recorded by', width: 74 },
    ],
    losses.map(({ at, enteredAt, by, what, quantity, why }) => ({
      at,
      under: entered({ at, enteredAt }, sheet.clock),
      cells: [[words('body', what)], [words('body', quantity)], [words('body', why ?? '–')], [words('body', by)]],
    })),
  );

  section(
    sheet,
    'Mass balance',
    [
      { head: 'Quantity', width: 170 },
      { head: 'Weight', width: 70, align: 'right' },
      { head: 'Share', width: 62, align: 'right' },
      { head: '', share: 1 },
    ],
    balance.map(({ label, quantity, share, total }) => {
      const style = total ? 'strong' : 'body';
      return { cells: [[words(style, label)], [words(style, quantity)], [words(style, share ?? '')]] };
    }),
  );
}

function section(sheet: Sheet, title: string, columns: Column[], entries: Entry[]): void {
  if (!entries.length) return;
  sheet.space(12);
  sheet.hold(heading(sheet.pen, sheet.area, title));
  const table = new Table(sheet, columns);
  for (const entry of entries) table.add(entry);
  table.end();
}
