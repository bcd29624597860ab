import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { given, words, type Paragraph } from '../page/words';
import type { SupplierLotData, TracedDeliveryData } from '../supplier-lot-data';
import type { SayOnPaper } from '../page/telling';

export function deliveries(sheet: Sheet, { deliveries: all }: SupplierLotData): void {
  section(
    sheet,
    sheet.say('every-delivery'),
    sheet.say('none-is-recorded'),
    [
      { head: sheet.say('delivery'), width: 46 },
      { head: sheet.say('what-from-whom'), share: 1.2 },
      { head: sheet.say('weight'), width: 62, align: 'right' },
      { head: sheet.say('what-became'), share: 1.3 },
    ],
    all.map((delivery) => ({
      at: delivery.at,
      cells: [
        [words('strong', delivery.code)],
        [words('body', delivery.item), words('small', delivery.from)],
        [words('body', { text: delivery.weight, strike: delivery.refused !== undefined })],
        outcome(delivery, sheet.say),
      ],
    })),
  );
}

function outcome({ weight, refused, became, fault }: TracedDeliveryData, say: SayOnPaper): Paragraph[] {
  if (refused) return given(words('strong', say('refused-went-back', { weight })), refused.why && words('smallInk', refused.why));
  return [...lines(became, say), ...given(fault && words('strong', fault))];
}

const lines = (said: string[], say: SayOnPaper): Paragraph[] =>
  said.length ? said.map((each) => words('body', each)) : [words('slanted', say('nothing-yet'))];

/** Includes lots reached through rework. */
export function lots(sheet: Sheet, { lots: all }: SupplierLotData): void {
  section(
    sheet,
    sheet.say('lots-it-went-into'),
    sheet.say('none-used'),
    [
      { head: sheet.say('lot'), width: 78 },
      { head: sheet.say('product'), share: 1 },
      { head: sheet.say('went-in'), width: 50, align: 'right' },
      { head: sheet.say('what-became'), share: 1.25 },
      { head: sheet.say('accounted-for'), width: 80 },
    ],
    all.map(({ code, product, wentIn, became, accounted, fault }) => ({
      cells: [
        [words('strong', code)],
        [words('body', product)],
        [words('body', wentIn)],
        lines(became, sheet.say),
        given(words(fault ? 'strong' : 'body', accounted), fault && words('small', fault)),
      ],
    })),
  );
}

export function packages(sheet: Sheet, { packages: all }: SupplierLotData): void {
  section(
    sheet,
    sheet.say('packages'),
    sheet.say('none-packed'),
    [
      { head: sheet.say('package-code'), share: 1.1 },
      { head: sheet.say('product'), share: 1.5 },
      { head: sheet.say('packed'), share: 0.8 },
      { head: sheet.say('shipped'), share: 0.8 },
      { head: sheet.say('still-here'), share: 0.8 },
    ],
    all.map(({ code, product, packed, shipped, here }) => ({
      cells: [
        [words('strong', code)],
        [words('body', product)],
        [words('body', packed)],
        [words('body', shipped)],
        [words('strong', here)],
      ],
    })),
  );
}

export function customers(sheet: Sheet, { customers: all }: SupplierLotData): void {
  section(
    sheet,
    sheet.say('customers-to-call'),
    sheet.say('none-shipped'),
    [
      { head: sheet.say('customer'), share: 1.1 },
      { head: sheet.say('call'), share: 0.8 },
      { head: sheet.say('got'), share: 1.5 },
      { head: sheet.say('packages'), width: 46, align: 'right' },
      { head: sheet.say('weight'), width: 60, align: 'right' },
    ],
    all.map(({ name, address, contact, got, packages: count, weight }) => ({
      cells: [
        [words('strong', name), words('small', address)],
        [words('body', contact)],
        got.map((each) => words('smallInk', each)),
        [words('strong', count)],
        [words('strong', weight)],
      ],
    })),
  );
}

function section(sheet: Sheet, title: string, none: string, columns: Column[], entries: Entry[]): void {
  sheet.space(10);
  sheet.hold(heading(sheet.pen, sheet.area, title));
  if (!entries.length) return sheet.put(remark(sheet.pen, sheet.area, '', words('slanted', none)));
  const table = new Table(sheet, columns);
  for (const entry of entries) table.add(entry);
  table.end();
}
