import { columnsOf, type ColumnHeading } from './columns-of';
import { measureNode } from './measure-node';
import { measures } from './measures';
import { orderColumns } from './order-columns';
import { placeLines, type PlacedLine, type PlacedNode } from './place-lines';
import { settleColumns } from './settle-columns';
import type { TraceGraph } from './trace-graph';

export type TraceDrawing = {
  width: number;
  height: number;
  nodeWidth: number;
  columns: { heading: ColumnHeading; x: number }[];
  nodes: PlacedNode[];
  lines: PlacedLine[];
};

/** The drawing is wider than `width` when it has more columns than fit. */
export function layOutTrace(graph: TraceGraph, width: number): TraceDrawing {
  const columns = orderColumns(columnsOf(graph), graph.links);
  const { nodeWidth, gap } = widths(columns.length, width);
  const xOf = (column: number) => column * (nodeWidth + gap);
  const measured = columns.map(({ nodes }) => nodes.map((node) => measureNode(node, graph, nodeWidth)));
  const settled = settleColumns(measured, graph.links);
  const nodes = settled.flatMap((column, i) => column.map((node) => ({ ...node, x: xOf(i) })));
  return {
    width: xOf(columns.length - 1) + nodeWidth,
    height: 4 + Math.max(0, ...nodes.map(({ y, height }) => y + height)),
    nodeWidth,
    columns: columns.map(({ heading }, i) => ({ heading, x: xOf(i) })),
    nodes,
    lines: placeLines(graph.links, nodes, nodeWidth),
  };
}

function widths(columns: number, width: number): { nodeWidth: number; gap: number } {
  const gaps = Math.max(1, columns - 1);
  const nodeWidth = Math.max(measures.leastNode, Math.floor((width - gaps * measures.leastGap) / columns));
  const own = Math.min(nodeWidth, measures.mostNode);
  return {
    nodeWidth: own,
    gap: Math.min(measures.mostGap, Math.max(measures.leastGap, (width - columns * own) / gaps)),
  };
}
