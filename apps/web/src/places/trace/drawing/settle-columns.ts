import type { MeasuredNode } from './measure-node';
import { measures } from './measures';
import { stackNodes } from './stack-nodes';
import type { TraceLink } from './trace-graph';

export type SettledNode = MeasuredNode & { y: number };

const rounds = 6;

/** Nodes stand beside what they come from and lead to where they can, so that lines run level. */
export function settleColumns(columns: MeasuredNode[][], links: readonly TraceLink[]): SettledNode[][] {
  const middles = new Map(
    columns.flatMap((nodes) => stackedFrom(nodes, () => 0).map(({ id, y, height }) => [id, y + height / 2] as const)),
  );
  const near = (id: string) =>
    links.flatMap(({ from, to }) => (from === id ? [to] : to === id ? [from] : [])).map((other) => middles.get(other) ?? 0);
  let placed: SettledNode[][] = [];
  for (let round = 0; round < rounds; round += 1) {
    placed = columns.map((nodes) => {
      const stacked = stackedFrom(nodes, ({ id, height }) => mean(near(id), middles.get(id) ?? 0) - height / 2);
      for (const { id, y, height } of stacked) middles.set(id, y + height / 2);
      return stacked;
    });
  }
  const top = Math.min(...placed.flat().map(({ y }) => y));
  return placed.map((nodes) => nodes.map((node) => ({ ...node, y: node.y - top + measures.head })));
}

function stackedFrom(nodes: MeasuredNode[], wanted: (node: MeasuredNode) => number): SettledNode[] {
  const tops = stackNodes(
    nodes.map((node) => ({ height: node.height, wanted: wanted(node) })),
    measures.betweenNodes,
  );
  return nodes.map((node, i) => ({ ...node, y: tops[i] ?? 0 }));
}

const mean = (all: number[], none: number): number => (all.length === 0 ? none : all.reduce((sum, each) => sum + each, 0) / all.length);
