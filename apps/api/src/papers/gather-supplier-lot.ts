import type { InputOf, printSupplierLot, SupplierLotTrace } from '@larderbook/contracts';
import type { SupplierLotData, TracedCustomerData, TracedDeliveryData, TracedLotData } from '@larderbook/documents';
import type { BalanceFault } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { traceSupplierLot } from '../trace/trace-supplier-lot';
import { sayTimeFor, type SayTime } from './say-time';
import { sheetOf } from './sheet-of';
import { many, sayAccounted, tracedTotals } from './traced-totals';
import { tracedPackages } from './traced-packages';
import { sayGramsFor, type SayGrams } from './say-weight';

/** A supplier's lot over all its deliveries, ready to print. Throws `not-found`. */
export async function gatherSupplierLot(tx: Tx, asked: InputOf<typeof printSupplierLot>, by: Person, now: Date): Promise<SupplierLotData> {
  const trace = await traceSupplierLot(tx, asked);
  const weight = sayGramsFor(by.establishment.units);
  const time = sayTimeFor(by.establishment);
  return {
    sheet: await sheetOf(tx, by, now),
    supplierLot: trace.supplierLot.trim(),
    items: distinct(trace.deliveries.map(({ item }) => item)),
    suppliers: distinct(trace.deliveries.map(({ supplier }) => supplier)),
    accounted: sayAccounted(trace.totals, weight),
    totals: tracedTotals(trace.totals, weight),
    alsoUsedBy: sayUsedBy(trace.usedBy, asked.supplierId),
    deliveries: trace.deliveries.map((delivery) => deliveryOnPaper(delivery, weight)),
    lots: trace.balance.filter(({ kind }) => kind === 'lot').map((lot) => lotOnPaper(lot, weight)),
    packages: tracedPackages(trace.forward, weight),
    customers: trace.customers.map((customer) => customerOnPaper(customer, weight, time)),
    callSuppliers: trace.suppliers.map(({ name, establishmentNumber, address, contact }) => ({
      name,
      where: [establishmentNumber, oneLine(address)].filter(Boolean).join(', ') || 'no address given',
      contact: contact || 'no contact given',
    })),
  };
}

const distinct = (names: readonly string[]): string => [...new Set(names)].join(', ');
const oneLine = (address: string): string => address.split(/\s*\n\s*/).join(', ');

function sayUsedBy(usedBy: SupplierLotTrace['usedBy'], supplierId: string | undefined): string | undefined {
  if (usedBy.length < 2) return undefined;
  const others = usedBy
    .filter((one) => one.supplierId !== supplierId)
    .map(({ supplier }) => supplier)
    .join(', ');
  return supplierId === undefined
    ? `${usedBy.length} suppliers use this number; all of them are traced here.`
    : `${others} too; only one supplier is traced here.`;
}

function deliveryOnPaper(delivery: SupplierLotTrace['deliveries'][number], weight: SayGrams): TracedDeliveryData {
  const { code, item, supplier, supplierLot, grams, receivedAt, decision, reason } = delivery;
  return {
    at: Date.parse(receivedAt),
    code,
    item,
    from: `${supplier}, lot ${supplierLot.trim()}`,
    weight: weight(grams),
    refused: decision === 'refused' ? { why: reason } : undefined,
    became: happened(weight, [
      ['went into lots', delivery.usedGrams],
      ['still here', delivery.onHandGrams],
      ['lost or taken out', delivery.removedGrams],
      ['condemned', delivery.condemnedGrams],
    ]),
    fault: unexplained(delivery, weight),
  };
}

const lotOnPaper = (lot: SupplierLotTrace['balance'][number], weight: SayGrams): TracedLotData => ({
  code: lot.code,
  product: lot.what,
  wentIn: weight(lot.inGrams),
  became: happened(weight, [
    ['went into lots', lot.usedGrams],
    ['shipped', lot.shippedGrams],
    [lot.packedGrams > 0 ? 'in packages here' : 'here', lot.onHandGrams],
    ['lost or taken out', lot.removedGrams],
    ['condemned', lot.condemnedGrams],
  ]),
  accounted: lot.accountedPercent === '' ? '–' : `${lot.accountedPercent} %`,
  fault: unexplained(lot, weight),
});

/** More than came is as much a fault as less. */
function unexplained({ fault, unexplainedGrams: grams }: { fault?: BalanceFault; unexplainedGrams: number }, weight: SayGrams) {
  if (!fault) return undefined;
  if (grams === 0) return fault === 'below-zero' ? 'a weight is below zero' : 'more was shipped than packed';
  return grams > 0 ? `${weight(grams)} that no record explains` : `${weight(-grams)} more than went in`;
}

const happened = (weight: SayGrams, parts: [what: string, grams: number][]): string[] =>
  parts.filter(([, grams]) => grams !== 0).map(([what, grams]) => `${weight(grams)} ${what}`);

function customerOnPaper(
  { name, address, contact, shipments }: SupplierLotTrace['customers'][number],
  weight: SayGrams,
  time: SayTime,
): TracedCustomerData {
  const sum = (of: 'count' | 'grams') => shipments.reduce((total, shipment) => total + shipment[of], 0);
  return {
    name,
    address: oneLine(address) || 'no address given',
    contact: contact || 'no contact given',
    got: shipments.map(
      ({ number, packingCode, count, at }) =>
        `${many(count, 'package')} of ${packingCode}, shipment ${number}, ${time.instant(Date.parse(at))}`,
    ),
    packages: String(sum('count')),
    weight: weight(sum('grams')),
  };
}
