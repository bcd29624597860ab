import type { TraceColumn } from './columns-of';
import type { TraceLink, TraceNode } from './trace-graph';

const sweeps = 8;

/**
 * Orders each column so that lines cross little: by date at first, then swept to and fro, each node to the middle of
 * its neighbours; the order with the fewest crossings is kept. The same trace always gives the same order.
 */
export function orderColumns(columns: TraceColumn[], links: readonly TraceLink[]): TraceColumn[] {
  let ordered = columns.map((column) => ({
    ...column,
    nodes: [...column.nodes].sort((a, b) => a.at.localeCompare(b.at) || a.title.localeCompare(b.title)),
  }));
  let best = { ordered, crossings: crossingsIn(ordered, links) };
  for (let sweep = 0; sweep < sweeps && best.crossings > 0; sweep += 1) {
    ordered = sweepOver(ordered, links, sweep % 2 === 0 ? 'from' : 'to');
    const crossings = crossingsIn(ordered, links);
    if (crossings < best.crossings) best = { ordered, crossings };
  }
  return best.ordered;
}

/** From the left by what went in (`from`), or from the right by what it went into (`to`). */
function sweepOver(columns: TraceColumn[], links: readonly TraceLink[], by: 'from' | 'to'): TraceColumn[] {
  const own = by === 'from' ? 'to' : 'from';
  const places = placesOf(columns);
  const inTurn = by === 'from' ? columns : [...columns].reverse();
  const swept = inTurn.map((column) => {
    const nodes = byMiddle(
      column.nodes,
      (id) => links.filter((link) => link[own] === id).map((link) => places.get(link[by]) ?? 0.5),
      places,
    );
    for (const [id, place] of placesOf([{ ...column, nodes }])) places.set(id, place);
    return { ...column, nodes };
  });
  return by === 'from' ? swept : swept.reverse();
}

/** From 0 at the top to 1 at the foot, so that long and short columns compare. */
const placesOf = (columns: TraceColumn[]): Map<string, number> =>
  new Map(columns.flatMap(({ nodes }) => nodes.map(({ id }, i) => [id, (i + 0.5) / nodes.length] as const)));

function byMiddle(nodes: TraceNode[], near: (id: string) => number[], places: ReadonlyMap<string, number>): TraceNode[] {
  const middle = ({ id }: TraceNode): number => {
    const all = near(id);
    return all.length === 0 ? (places.get(id) ?? 0.5) : all.reduce((sum, place) => sum + place, 0) / all.length;
  };
  return nodes
    .map((node) => ({ node, at: middle(node) }))
    .sort((a, b) => a.at - b.at)
    .map(({ node }) => node);
}

function crossingsIn(columns: TraceColumn[], links: readonly TraceLink[]): number {
  const at = new Map(columns.flatMap(({ nodes }, column) => nodes.map(({ id }, place) => [id, { column, place }] as const)));
  const lines = links.flatMap(({ from, to }) => {
    const [left, right] = [at.get(from), at.get(to)];
    return left && right ? [{ between: `${left.column} ${right.column}`, left: left.place, right: right.place }] : [];
  });
  return lines.reduce(
    (sum, a, i) => sum + lines.slice(i + 1).filter((b) => a.between === b.between && (a.left - b.left) * (a.right - b.right) < 0).length,
    0,
  );
}
