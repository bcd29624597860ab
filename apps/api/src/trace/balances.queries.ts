import type { Trace } from '@larderbook/contracts';
import type { MassBalance } from '@larderbook/haccp';
import { weightsOfLots } from '../lots/lot-weights.queries';
import type { Tx } from '../platform/database';
import { gramsOf } from '../platform/kept-weight';
import { balanceOfLot, balanceOfReceipt } from './balance';
import { movementsOfLots, movementsOfReceipts, type Moved } from './movements.queries';
import type { TraceNode } from './nodes.queries';
import { idsOf } from './side-of';

export type Balanced = { node: TraceNode; balance: MassBalance; moved: Moved };

export async function balanced(tx: Tx, nodes: readonly TraceNode[]): Promise<Balanced[]> {
  const [receipts, lots, stock] = await Promise.all([
    movementsOfReceipts(tx, idsOf(nodes, 'receipt')),
    movementsOfLots(tx, idsOf(nodes, 'lot')),
    weightsOfLots(tx, idsOf(nodes, 'lot')),
  ]);
  return nodes.flatMap((node): Balanced[] => {
    const [received, made] = [receipts.get(node.id), lots.get(node.id)];
    if (node.kind === 'receipt' && received) return [{ node, balance: balanceOfReceipt(received), moved: received }];
    if (node.kind === 'lot' && made) return [{ node, balance: balanceOfLot(made, stock.get(node.id)), moved: made }];
    return [];
  });
}

export const tellBalances = (all: readonly Balanced[]): Trace['balance'] =>
  all.flatMap(({ node: { at: _, kind, ...described }, balance, moved }) =>
    kind === 'receipt' || kind === 'lot' ? [{ kind, ...described, ...tellBalance(balance, moved) }] : [],
  );

export const tellBalance = (balance: MassBalance, moved: Moved) => ({
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
