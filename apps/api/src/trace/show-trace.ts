import type { Trace } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { balanced, tellBalances } from './balances.queries';
import { linksAfter, linksBefore } from './links.queries';
import { customersOf, suppliersOf } from './neighbours.queries';
import { describeNodes, type TraceNode } from './nodes.queries';
import { endsOf, idsOf, sideOf } from './side-of';

/** Throws `not-found`. */
export async function showTrace(tx: Tx, nodeId: string): Promise<Trace> {
  const began = performance.now();
  const [before, after] = await Promise.all([linksBefore(tx, nodeId), linksAfter(tx, [nodeId])]);
  const described = await describeNodes(tx, [...new Set([nodeId, ...endsOf(before), ...endsOf(after)])]);
  const start = described.get(nodeId);
  if (!start || start.kind === 'customer') throw new Problem('not-found', told('nothing-to-trace'));

  const backward = sideOf([start.id], before, described);
  const forward = sideOf([start.id], after, described);
  const [suppliers, customers, balance] = await Promise.all([
    suppliersOf(tx, idsOf(backward.nodes, 'receipt')),
    customersOf(tx, idsOf(forward.nodes, 'packing')),
    balanced(tx, [...new Set([...backward.nodes, ...forward.nodes])]),
  ]);
  return {
    start: withoutMoment(start),
    backward,
    forward,
    suppliers,
    customers,
    balance: tellBalances(balance),
    tookMilliseconds: Math.round(performance.now() - began),
  };
}

const withoutMoment = ({ at: _, ...start }: TraceNode): Trace['start'] => start;
