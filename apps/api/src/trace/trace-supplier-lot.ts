import type { InputOf, SupplierLotTrace, traceSupplierLot as contract } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { balanced, tellBalances, tellBalance, type Balanced } from './balances.queries';
import { linksAfter } from './links.queries';
import { customersOf, suppliersOf } from './neighbours.queries';
import { describeNodes } from './nodes.queries';
import { endsOf, idsOf, sideOf } from './side-of';
import { deliveriesUnder, type DeliveryOfLot } from './supplier-lot-deliveries.queries';
import { supplierLotTotals } from './supplier-lot-totals';

/**
 * Includes refused deliveries. Without a supplier, all who use the number are traced together and named. Throws
 * `not-found`.
 */
export async function traceSupplierLot(tx: Tx, { supplierLot, supplierId }: InputOf<typeof contract>): Promise<SupplierLotTrace> {
  const began = performance.now();
  const everyones = await deliveriesUnder(tx, supplierLot);
  const deliveries = everyones.filter((one) => supplierId === undefined || one.supplierId === supplierId);
  const [first] = deliveries;
  if (!first) throw new Problem('not-found', told('no-delivery-of-lot'));

  const receiptIds = deliveries.map(({ receiptId }) => receiptId);
  const links = await linksAfter(tx, receiptIds);
  const forward = sideOf(receiptIds, links, await describeNodes(tx, [...new Set([...receiptIds, ...endsOf(links)])]));
  const [suppliers, customers, all] = await Promise.all([
    suppliersOf(tx, receiptIds),
    customersOf(tx, idsOf(forward.nodes, 'packing')),
    balanced(tx, forward.nodes),
  ]);
  const refused = new Set(deliveries.flatMap(({ receiptId, decision }) => (decision === 'refused' ? receiptId : [])));
  return {
    supplierLot: first.supplierLot,
    usedBy: usedBy(everyones),
    deliveries: deliveries.flatMap((delivery) => tell(delivery, all)),
    totals: supplierLotTotals(all, (receiptId) => refused.has(receiptId), forward),
    forward,
    suppliers,
    customers,
    balance: tellBalances(all),
    tookMilliseconds: Math.round(performance.now() - began),
  };
}

/** The supplier with most deliveries comes first. */
function usedBy(deliveries: readonly DeliveryOfLot[]): SupplierLotTrace['usedBy'] {
  const bySupplier = new Map<string, SupplierLotTrace['usedBy'][number]>();
  for (const { supplierId, supplier } of deliveries) {
    const before = bySupplier.get(supplierId)?.deliveries ?? 0;
    bySupplier.set(supplierId, { supplierId, supplier, deliveries: before + 1 });
  }
  return [...bySupplier.values()].sort((a, b) => b.deliveries - a.deliveries || a.supplier.localeCompare(b.supplier));
}

function tell(delivery: DeliveryOfLot, all: readonly Balanced[]): SupplierLotTrace['deliveries'] {
  const found = all.find(({ node }) => node.id === delivery.receiptId);
  if (!found) return [];
  const { inGrams: _in, packedGrams: _packed, shippedGrams: _shipped, ...became } = tellBalance(found.balance, found.moved);
  return [{ ...delivery, receivedAt: delivery.receivedAt.toISOString(), ...became }];
}
