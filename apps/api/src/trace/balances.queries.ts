import type { Trace } from '@larderbook/contracts';
import type { MassBalance } from '@larderbook/haccp';
import { lotsHold } from '../lots/lot-holds.queries';
import type { Tx } from '../platform/database';
import { gramsOf } from '../platform/kept-weight';
import { balanceOfLot, balanceOfReceipt } from './balance';
import { movementsOfLots, movementsOfReceipts, type Moved } from './movements.queries';
import type { TraceNode } from './nodes.queries';

/** Where the weight of each delivery and lot of a trace went. */
export async function balancesOf(tx: Tx, nodes: readonly TraceNode[]): Promise<Trace['balance']> {
  const idsOf = (kind: TraceNode['kind']) => nodes.filter((node) => node.kind === kind).map(({ id }) => id);
  const [receipts, lots, stock] = await Promise.all([
    movementsOfReceipts(tx, idsOf('receipt')),
    movementsOfLots(tx, idsOf('lot')),
    lotsHold(tx, idsOf('lot')),
  ]);
  return nodes.flatMap(({ kind, id, code, what }): Trace['balance'] => {
    const [received, made] = [receipts.get(id), lots.get(id)];
    if (kind === 'receipt' && received)
      return [{ kind, id, code, what, ...told(balanceOfReceipt(received), received) }];
    if (kind === 'lot' && made) return [{ kind, id, code, what, ...told(balanceOfLot(made, stock.get(id)), made) }];
    return [];
  });
}

const told = (balance: MassBalance, moved: Moved) => ({
  inGrams: gramsOf(balance.made),
  usedGrams: gramsOf(balance.used),
  packedGrams: gramsOf(balance.packed),
  shippedGrams: gramsOf(balance.shipped),
  removedGrams: gramsOf(moved('removed')),
  condemnedGrams: gramsOf(moved('condemned')),
  onHandGrams: gramsOf(balance.onHand),
  unexplainedGrams: gramsOf(balance.unexplained),
  accountedPercent: balance.percentAccounted ?? '',
  fault: balance.fault,
});
