import type { SupplierLotTrace } from '@larderbook/contracts';
import { massBalance } from '@larderbook/haccp';
import { gramsOf } from '../platform/kept-weight';
import type { Balanced } from './balances.queries';
import type { TraceLink } from './links.queries';
import { idsOf, type sideOf } from './side-of';

type Side = ReturnType<typeof sideOf>;
type Totals = SupplierLotTrace['totals'];

/** A shortage in one delivery does not cancel an excess in another, so 100 % means that each adds up. */
export function supplierLotTotals(all: readonly Balanced[], isRefused: (receiptId: string) => boolean, forward: Side): Totals {
  const deliveries = all.filter(({ node }) => node.kind === 'receipt');
  const [refused, received] = [true, false].map((side) => deliveries.filter(({ node }) => isRefused(node.id) === side));
  return {
    deliveries: deliveries.length,
    refused: refused?.length ?? 0,
    refusedGrams: gramsOf(sum(refused, ({ balance }) => balance.made)),
    ...ofDelivered(received ?? []),
    ...ofMade(all, forward),
  };
}

function ofDelivered(received: readonly Balanced[]) {
  const made = sum(received, ({ balance }) => balance.made);
  const unexplained = sum(received, ({ balance }) => absolute(balance.unexplained));
  const explained = { made, used: made - unexplained, packed: 0n, shipped: 0n, removed: 0n, onHand: 0n };
  return {
    receivedGrams: gramsOf(made),
    usedGrams: gramsOf(sum(received, ({ balance }) => balance.used)),
    leftGrams: gramsOf(sum(received, ({ balance }) => balance.onHand)),
    removedGrams: gramsOf(sum(received, ({ moved }) => moved('removed'))),
    condemnedGrams: gramsOf(sum(received, ({ moved }) => moved('condemned'))),
    unexplainedGrams: gramsOf(unexplained),
    accountedPercent: massBalance(explained).percentAccounted ?? '',
  };
}

/** Each lot and package counts once, however many deliveries went into it. */
function ofMade(all: readonly Balanced[], { nodes, links }: Side) {
  const lots = all.filter(({ node }) => node.kind === 'lot');
  const into = (kind: 'packing' | 'customer') => {
    const ids = new Set(idsOf(nodes, kind));
    return links.filter(({ to }) => ids.has(to));
  };
  const [packed, shipped] = [into('packing'), into('customer')];
  const [packages, left] = [countOf(packed), countOf(packed) - countOf(shipped)];
  return {
    lots: lots.length,
    inWorkGrams: gramsOf(
      sum(
        lots.filter(({ balance }) => balance.packed === 0n),
        ({ balance }) => balance.onHand,
      ),
    ),
    packed: packages,
    packedGrams: weightOf(packed),
    shipped: countOf(shipped),
    shippedGrams: weightOf(shipped),
    notShipped: left,
    notShippedGrams: weightOf(packed) - weightOf(shipped),
    customers: idsOf(nodes, 'customer').length,
  };
}

const sum = (all: readonly Balanced[] | undefined, of: (one: Balanced) => bigint): bigint =>
  (all ?? []).reduce((total, one) => total + of(one), 0n);
const absolute = (mass: bigint): bigint => (mass < 0n ? -mass : mass);
const countOf = (links: readonly TraceLink[]): number => links.reduce((total, { count = 0 }) => total + count, 0);
const weightOf = (links: readonly TraceLink[]): number => links.reduce((total, { grams }) => total + grams, 0);
