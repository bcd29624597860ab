import type { LotRecordData } from '../lot-record-data';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { given, words } from '../page/words';
import { entered } from '../parts/entered';

export function packing(sheet: Sheet, data: LotRecordData): void {
  packed(sheet, data);
  shipped(sheet, data);
  lost(sheet, data);
  massBalance(sheet, data);
}

function packed(sheet: Sheet, { packages }: LotRecordData): void {
  const { say } = sheet;
  section(
    sheet,
    say('packages'),
    [
      { head: say('package-code'), share: 1.4 },
      { head: say('count'), width: 38, align: 'right' },
      { head: say('net-each'), width: 52, align: 'right' },
      { head: say('total'), width: 54, align: 'right' },
      { head: say('use-by'), width: 68 },
      { head: say('packed-by'), width: 74 },
    ],
    packages.map(({ at, enteredAt, by, code, count, net, total, useBy, label }) => ({
      at,
      under: entered({ at, enteredAt }, sheet),
      cells: [
        given(words('body', code), label && words('small', label)),
        [words('body', String(count))],
        [words('body', net)],
        [words('strong', total)],
        [words('body', useBy ?? say('no-use-by'))],
        [words('body', by)],
      ],
    })),
  );
}

function shipped(sheet: Sheet, { shipments }: LotRecordData): void {
  const { say } = sheet;
  section(
    sheet,
    say('shipments'),
    [
      { head: say('customer'), share: 1.2 },
      { head: say('what-goods'), share: 1.2 },
      { head: say('document'), share: 0.7 },
      { head: say('shipped-by'), width: 74 },
    ],
    shipments.map(({ at, enteredAt, by, customer, what, document, note }) => ({
      at,
      cells: [[words('body', customer)], [words('body', what)], [words('body', document ?? '–')], [words('body', by)]],
      under: [...(note ? [words('small', note)] : []), ...entered({ at, enteredAt }, sheet)],
    })),
  );
}

function lost(sheet: Sheet, { losses }: LotRecordData): void {
  const { say } = sheet;
  section(
    sheet,
    say('losses'),
    [
      { head: say('loss'), share: 1 },
      { head: say('quantity'), width: 62, align: 'right' },
      { head: say('why'), share: 1.2 },
      { head: say('recorded-by'), width: 74 },
    ],
    losses.map(({ at, enteredAt, by, what, quantity, why }) => ({
      at,
      under: entered({ at, enteredAt }, sheet),
      cells: [[words('body', what)], [words('body', quantity)], [words('body', why ?? '–')], [words('body', by)]],
    })),
  );
}

function massBalance(sheet: Sheet, { balance }: LotRecordData): void {
  const { say } = sheet;
  section(
    sheet,
    say('mass-balance'),
    [
      { head: say('quantity'), width: 170 },
      { head: say('weight'), width: 70, align: 'right' },
      { head: say('share'), width: 62, align: 'right' },
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
