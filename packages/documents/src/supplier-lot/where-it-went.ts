import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { Table, type Column, type Entry } from '../page/table';
import { given, words, type Paragraph } from '../page/words';
import type { SupplierLotData, TracedDeliveryData } from '../supplier-lot-data';

/** Every delivery of the number; a refused one says so, and why. */
export function deliveries(sheet: Sheet, { deliveries: all }: SupplierLotData): void {
  section(
    sheet,
    'Every delivery of this number',
    'None is recorded.',
    [
      { head: 'Delivery', width: 46 },
      { head: 'What, from whom', share: 1.2 },
      { head: 'Weight', width: 62, align: 'right' },
      { head: 'What became of it', share: 1.3 },
    ],
    all.map((delivery) => ({
      at: delivery.at,
      cells: [
        [words('strong', delivery.code)],
        [words('body', delivery.item), words('small', delivery.from)],
        [words('body', { text: delivery.weight, strike: delivery.refused !== undefined })],
        outcome(delivery),
      ],
    })),
  );
}

function outcome({ weight, refused, became, fault }: TracedDeliveryData): Paragraph[] {
  if (refused) return given(words('strong', `Refused, ${weight} went back`), refused.why && words('smallInk', refused.why));
  return [...lines(became), ...given(fault && words('strong', fault))];
}

const lines = (said: string[]): Paragraph[] => (said.length ? said.map((each) => words('body', each)) : [words('slanted', 'nothing yet')]);

/** The lots it went into, at once or by way of rework, each with what became of all of it. */
export function lots(sheet: Sheet, { lots: all }: SupplierLotData): void {
  section(
    sheet,
    'Lots it went into',
    'None: nothing of it was used.',
    [
      { head: 'Lot', width: 78 },
      { head: 'Product', share: 1 },
      { head: 'Went in', width: 50, align: 'right' },
      { head: 'What became of it', share: 1.25 },
      { head: 'Accounted for', width: 80 },
    ],
    all.map(({ code, product, wentIn, became, accounted, fault }) => ({
      cells: [
        [words('strong', code)],
        [words('body', product)],
        [words('body', wentIn)],
        lines(became),
        given(words(fault ? 'strong' : 'body', accounted), fault && words('small', fault)),
      ],
    })),
  );
}

/** What was packed of those lots, how many have left, and how many are still here to be held. */
export function packages(sheet: Sheet, { packages: all }: SupplierLotData): void {
  section(
    sheet,
    'Packages',
    'None: nothing of it was packed.',
    [
      { head: 'Package code', share: 1.1 },
      { head: 'Product', share: 1.5 },
      { head: 'Packed', share: 0.8 },
      { head: 'Shipped', share: 0.8 },
      { head: 'Still here', share: 0.8 },
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
    'Customers to call',
    'None: nothing of it has been shipped.',
    [
      { head: 'Customer', share: 1.1 },
      { head: 'Call', share: 0.8 },
      { head: 'Got', share: 1.5 },
      { head: 'Packages', width: 46, align: 'right' },
      { head: 'Weight', width: 60, align: 'right' },
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
