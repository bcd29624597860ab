import type { InputOf, printSupplierLot, SupplierLotTrace } from '@larderbook/contracts';
import type { SupplierLotData, TracedCustomerData, TracedDeliveryData, TracedLotData } from '@larderbook/documents';
import type { BalanceFault } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { traceSupplierLot } from '../trace/trace-supplier-lot';
import { tellingIn, type Telling } from './telling';
import { sheetOf } from './sheet-of';
import { accountedOnPaper, tracedTotals } from './traced-totals';
import { tracedPackages } from './traced-packages';
import { formatGramsFor, type FormatGrams } from './format-weight';

/** Covers all deliveries of the lot. Throws `not-found`. */
export async function gatherSupplierLot(tx: Tx, asked: InputOf<typeof printSupplierLot>, by: Person, now: Date): Promise<SupplierLotData> {
  const trace = await traceSupplierLot(tx, asked);
  const weight = formatGramsFor(by.establishment.units);
  const telling = tellingIn(by.voice);
  return {
    sheet: await sheetOf(tx, by, now),
    supplierLot: trace.supplierLot.trim(),
    items: distinct(trace.deliveries.map(({ item }) => item)),
    suppliers: distinct(trace.deliveries.map(({ supplier }) => supplier)),
    accounted: accountedOnPaper(trace.totals, weight, telling.say),
    totals: tracedTotals(trace.totals, weight, telling.say),
    alsoUsedBy: usedByOnPaper(trace.usedBy, asked.supplierId, telling.say),
    deliveries: trace.deliveries.map((delivery) => deliveryOnPaper(delivery, weight, telling.say)),
    lots: trace.balance.filter(({ kind }) => kind === 'lot').map((lot) => lotOnPaper(lot, weight, telling.say)),
    packages: tracedPackages(trace.forward, weight, telling.say),
    customers: trace.customers.map((customer) => customerOnPaper(customer, weight, telling)),
    callSuppliers: trace.suppliers.map(({ name, establishmentNumber, address, contact }) => ({
      name,
      where: [establishmentNumber, oneLine(address)].filter(Boolean).join(', ') || telling.say('no-address'),
      contact: contact || telling.say('no-contact'),
    })),
  };
}

const distinct = (names: readonly string[]): string => [...new Set(names)].join(', ');
const oneLine = (address: string): string => address.split(/\s*\n\s*/).join(', ');

function usedByOnPaper(usedBy: SupplierLotTrace['usedBy'], supplierId: string | undefined, say: Telling['say']): string | undefined {
  if (usedBy.length < 2) return undefined;
  const others = usedBy
    .filter((one) => one.supplierId !== supplierId)
    .map(({ supplier }) => supplier)
    .join(', ');
  return supplierId === undefined ? say('suppliers-share', { count: String(usedBy.length) }) : say('others-too', { others });
}

function deliveryOnPaper(delivery: SupplierLotTrace['deliveries'][number], weight: FormatGrams, say: Telling['say']): TracedDeliveryData {
  const { code, item, supplier, supplierLot, grams, receivedAt, decision, reason } = delivery;
  return {
    at: Date.parse(receivedAt),
    code,
    item,
    from: say('supplier-and-lot', { supplier, lot: supplierLot.trim() }),
    weight: weight(grams),
    refused: decision === 'refused' ? { why: reason } : undefined,
    became: happened(weight, say, [
      ['went-into-lots', delivery.usedGrams],
      ['still-here-weight', delivery.onHandGrams],
      ['lost-or-out', delivery.removedGrams],
      ['condemned-weight', delivery.condemnedGrams],
    ]),
    fault: unexplained(delivery, weight, say),
  };
}

const lotOnPaper = (lot: SupplierLotTrace['balance'][number], weight: FormatGrams, say: Telling['say']): TracedLotData => ({
  code: lot.code,
  product: lot.what,
  wentIn: weight(lot.inGrams),
  became: happened(weight, say, [
    ['went-into-lots', lot.usedGrams],
    ['shipped-weight', lot.shippedGrams],
    [lot.packedGrams > 0 ? 'in-packages-here' : 'here-weight', lot.onHandGrams],
    ['lost-or-out', lot.removedGrams],
    ['condemned-weight', lot.condemnedGrams],
  ]),
  accounted: lot.accountedPercent === '' ? '–' : `${lot.accountedPercent} %`,
  fault: unexplained(lot, weight, say),
});

/** More than came in is as much a fault as less. */
type Unexplained = { fault?: BalanceFault; unexplainedGrams: number };

function unexplained({ fault, unexplainedGrams: grams }: Unexplained, weight: FormatGrams, say: Telling['say']): string | undefined {
  if (!fault) return undefined;
  if (grams === 0) return say(fault === 'below-zero' ? 'weight-below-zero' : 'more-shipped-than-packed');
  return grams > 0 ? say('no-record-explains', { weight: weight(grams) }) : say('more-than-went-in', { weight: weight(-grams) });
}

type Became =
  | 'went-into-lots'
  | 'still-here-weight'
  | 'lost-or-out'
  | 'condemned-weight'
  | 'shipped-weight'
  | 'in-packages-here'
  | 'here-weight';

const happened = (weight: FormatGrams, say: Telling['say'], parts: [what: Became, grams: number][]): string[] =>
  parts.filter(([, grams]) => grams !== 0).map(([what, grams]) => say(what, { weight: weight(grams) }));

function customerOnPaper(
  { name, address, contact, shipments }: SupplierLotTrace['customers'][number],
  weight: FormatGrams,
  telling: Telling,
): TracedCustomerData {
  const sum = (of: 'count' | 'grams') => shipments.reduce((total, shipment) => total + shipment[of], 0);
  return {
    name,
    address: oneLine(address) || telling.say('no-address'),
    contact: contact || telling.say('no-contact'),
    got: shipments.map(({ number, packingCode, count, at }) =>
      telling.say('got-packages', { count, code: packingCode, number: String(number), at: telling.instant(Date.parse(at)) }),
    ),
    packages: String(sum('count')),
    weight: weight(sum('grams')),
  };
}
