import type { TraceGraph, TraceKind, TraceNode } from './trace-graph';

export type ColumnHeading = 'suppliers' | 'deliveries' | 'lots' | 'lots-made-of-them' | 'packages' | 'customers';
export type TraceColumn = { heading: ColumnHeading; nodes: TraceNode[] };

/** A lot stands to the right of every lot that went into it; empty columns are left out. */
export function columnsOf(graph: TraceGraph): TraceColumn[] {
  const depths = lotDepths(graph);
  const deepest = Math.max(0, ...depths.values());
  const place = ({ id, kind }: TraceNode): number =>
    ({ supplier: 0, receipt: 1, lot: 2 + (depths.get(id) ?? 0), packing: 3 + deepest, customer: 4 + deepest })[kind];

  const columns = Array.from({ length: 5 + deepest }, (_none, i) => graph.nodes.filter((node) => place(node) === i));
  return columns.flatMap((nodes) => headingOf(nodes, depths).map((heading) => ({ heading, nodes })));
}

const headings: Record<TraceKind, ColumnHeading> = {
  supplier: 'suppliers',
  receipt: 'deliveries',
  lot: 'lots',
  packing: 'packages',
  customer: 'customers',
};

function headingOf([first]: TraceNode[], depths: ReadonlyMap<string, number>): ColumnHeading[] {
  if (!first) return [];
  return [(depths.get(first.id) ?? 0) > 0 ? 'lots-made-of-them' : headings[first.kind]];
}

/**
 * Counts the lots, one into the next, before each lot. Rework cannot run in circles; were it to, it would be walked
 * once.
 */
function lotDepths({ nodes, links }: TraceGraph): Map<string, number> {
  const isLot = new Set(nodes.filter(({ kind }) => kind === 'lot').map(({ id }) => id));
  const before = (id: string) => links.filter(({ from, to }) => to === id && isLot.has(from)).map(({ from }) => from);
  const depths = new Map<string, number>();
  const depthOf = (id: string, walked: ReadonlySet<string>): number => {
    const known = depths.get(id);
    if (known !== undefined) return known;
    const deeper = before(id)
      .filter((from) => !walked.has(from))
      .map((from) => 1 + depthOf(from, new Set([...walked, id])));
    const depth = Math.max(0, ...deeper);
    depths.set(id, depth);
    return depth;
  };
  for (const id of isLot) depthOf(id, new Set());
  return depths;
}
