import type { Trace } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { balancesOf } from './balances.queries';
import { linksAfter, linksBefore, type TraceLink } from './links.queries';
import { customersOf, suppliersOf } from './neighbours.queries';
import { describeNodes, type TraceNode } from './nodes.queries';

/** Everything behind and everything after one delivery, lot or packing. Throws `not-found`. */
export async function showTrace(tx: Tx, nodeId: string): Promise<Trace> {
  const began = performance.now();
  const [before, after] = await Promise.all([linksBefore(tx, nodeId), linksAfter(tx, nodeId)]);
  const described = await describeNodes(tx, [...new Set([nodeId, ...endsOf(before), ...endsOf(after)])]);
  const start = described.get(nodeId);
  if (!start || start.kind === 'customer')
    throw new Problem('not-found', { detail: 'There is no such delivery, lot or packing.' });

  const backward = side(start, before, described);
  const forward = side(start, after, described);
  const [suppliers, customers, balance] = await Promise.all([
    suppliersOf(tx, idsOf(backward.nodes, 'receipt')),
    customersOf(tx, idsOf(forward.nodes, 'packing')),
    balancesOf(tx, [...new Set([...backward.nodes, ...forward.nodes])]),
  ]);
  return {
    start: { kind: start.kind, id: start.id, code: start.code, what: start.what },
    backward,
    forward,
    suppliers,
    customers,
    balance,
    tookMilliseconds: Math.round(performance.now() - began),
  };
}

const endsOf = (links: TraceLink[]): string[] => links.flatMap(({ from, to }) => [from, to]);

const idsOf = (nodes: TraceNode[], kind: TraceNode['kind']): string[] =>
  nodes.filter((node) => node.kind === kind).map(({ id }) => id);

/** The start stands on both sides, so that every link has both its ends. */
function side(start: TraceNode, links: TraceLink[], described: ReadonlyMap<string, TraceNode>) {
  const ids = new Set([start.id, ...endsOf(links)]);
  return {
    nodes: [...ids].flatMap((id) => described.get(id) ?? []).sort((a, b) => Date.parse(a.at) - Date.parse(b.at)),
    links: links.map(({ from, to, grams, count }) => ({ from, to, grams, count })),
  };
}
