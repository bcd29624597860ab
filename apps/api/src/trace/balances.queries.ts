import type { Trace } from '@larderbook/contracts';
import type { MassBalance } from '@larderbook/haccp';
import { stockOf } from '../packing/stock.queries';
import type { Tx } from '../platform/database';
import { gramsOf } from '../platform/kept-weight';
import { balanceOfLot, balanceOfReceipt } from './balance';
import { movements, type Moved } from './movements.queries';
import type { TraceNode } from './nodes.queries';

/** Where the weight of each delivery and lot of a trace went. */
export async function balancesOf(tx: Tx, nodes: readonly TraceNode[]): Promise<Trace['balance']> {
  const weighed = nodes.flatMap((node) => (node.kind === 'receipt' || node.kind === 'lot' ? [{ ...node, kind: node.kind }] : []));
  const moved = await movements(tx, weighed.map(({ id }) => id));
  const stock = await stockOf(tx, weighed.filter(({ kind }) => kind === 'lot').map(({ id }) => id));
  return weighed.flatMap(({ kind, id, code, what }) => {
    const happened = moved.get(id);
    if (!happened) return [];
    const balance = kind === 'receipt' ? balanceOfReceipt(happened) : balanceOfLot(happened, stock.get(id));
    return [{ kind, id, code, what, ...told(balance, happened) }];
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
