import { columnsOf } from './columns-of';
import { orderColumns } from './order-columns';
import { stackNodes } from './stack-nodes';
import type { TraceGraph, TraceLink, TraceNode } from './trace-graph';
import { wrapWords } from './wrap-words';

type MeasuredNode = TraceNode & { x: number; height: number; isStart: boolean; titleLines: string[]; textLines: string[] };
export type PlacedNode = MeasuredNode & { y: number };
/** From the right edge of one node to the left edge of another; each line has its own place at both ends. */
export type PlacedLine = { link: TraceLink; x1: number; y1: number; x2: number; y2: number };
export type TraceDrawing = {
  width: number; height: number; nodeWidth: number;
  columns: { heading: string; x: number }[];
  nodes: PlacedNode[];
  lines: PlacedLine[];
};

/** CSS pixels. Letters are reckoned at a mean width, on the safe side for the faces in use. */
export const measures = {
  head: 44, padding: 8, titleLine: 19, textLine: 17, titleLetter: 7.2, textLetter: 6.7, betweenNodes: 16, leastNode: 118, mostNode: 190, leastGap: 74, mostGap: 110,
  /** Between two lines that end at the same node: room for a weight, or for a weight and a count. */
  betweenLines: 21, betweenCounted: 36,
};

/** Where everything of a trace stands in a drawing that is `width` wide, or wider when it has more columns than fit. */
export function layOutTrace(graph: TraceGraph, width: number): TraceDrawing {
  const columns = orderColumns(columnsOf(graph), graph.links);
  const { nodeWidth, gap } = widths(columns.length, width);
  const xOf = (column: number) => column * (nodeWidth + gap);
  const measured = columns.map(({ nodes }, i) => nodes.map((node) => ({ ...measure(node, graph, nodeWidth), x: xOf(i) })));
  const nodes = settle(measured, graph.links).flat();
  return {
    width: xOf(columns.length - 1) + nodeWidth, height: 4 + Math.max(0, ...nodes.map(({ y, height }) => y + height)), nodeWidth,
    columns: columns.map(({ heading }, i) => ({ heading, x: xOf(i) })),
    nodes,
    lines: placeLines(graph.links, nodes, nodeWidth),
  };
}

function widths(columns: number, width: number): { nodeWidth: number; gap: number } {
  const gaps = Math.max(1, columns - 1);
  const nodeWidth = Math.max(measures.leastNode, Math.floor((width - gaps * measures.leastGap) / columns));
  const own = Math.min(nodeWidth, measures.mostNode);
  return { nodeWidth: own, gap: Math.min(measures.mostGap, Math.max(measures.leastGap, (width - columns * own) / gaps)) };
}

const rounds = 6;

/** Gives every node its height on the page, as far as it goes beside what it comes from and leads to, so that lines run level. */
function settle(columns: MeasuredNode[][], links: readonly TraceLink[]): PlacedNode[][] {
  const middles = new Map(columns.flatMap((nodes) => stackedFrom(nodes, () => 0).map(({ id, y, height }) => [id, y + height / 2] as const)));
  const near = (id: string) => links.flatMap(({ from, to }) => (from === id ? [to] : to === id ? [from] : [])).map((other) => middles.get(other) ?? 0);
  let placed: PlacedNode[][] = [];
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

function stackedFrom(nodes: MeasuredNode[], wanted: (node: MeasuredNode) => number): PlacedNode[] {
  const tops = stackNodes(nodes.map((node) => ({ height: node.height, wanted: wanted(node) })), measures.betweenNodes);
  return nodes.map((node, i) => ({ ...node, y: tops[i] ?? 0 }));
}

const mean = (all: number[], none: number): number => (all.length === 0 ? none : all.reduce((sum, each) => sum + each, 0) / all.length);

function measure(node: TraceNode, { startId, links }: TraceGraph, nodeWidth: number) {
  const { padding, titleLine, textLine, titleLetter, textLetter } = measures;
  const inner = nodeWidth - 2 * padding;
  const titleLines = wrapWords(node.title, Math.floor(inner / titleLetter), 3);
  const textLines = node.lines.flatMap((line) => wrapWords(line, Math.floor(inner / textLetter), 2));
  const words = 2 * padding + titleLines.length * titleLine + textLines.length * textLine;
  const ends = Math.max(roomFor(links.filter(({ to }) => to === node.id)), roomFor(links.filter(({ from }) => from === node.id)));
  return { ...node, isStart: node.id === startId, titleLines, textLines, height: Math.max(words, ends) };
}

const roomOf = ({ count }: TraceLink): number => (count === undefined ? measures.betweenLines : measures.betweenCounted);
const roomFor = (links: TraceLink[]): number => links.reduce((sum, link) => sum + roomOf(link), measures.padding);

/** The ends of lines at a node stand in the order of what they lead to, so that they do not cross at the node. */
function placeLines(links: readonly TraceLink[], nodes: readonly PlacedNode[], nodeWidth: number): PlacedLine[] {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const endsOf = (id: string, side: 'from' | 'to') => {
    const far = side === 'from' ? 'to' : 'from';
    return links.filter((link) => link[side] === id).sort((a, b) => (byId.get(a[far])?.y ?? 0) - (byId.get(b[far])?.y ?? 0));
  };
  const endAt = ({ id, y, height }: PlacedNode, side: 'from' | 'to', link: TraceLink): number => {
    const ends = endsOf(id, side);
    const before = ends.slice(0, ends.indexOf(link)).reduce((sum, each) => sum + roomOf(each), 0);
    const all = ends.reduce((sum, each) => sum + roomOf(each), 0);
    return y + (height - all) / 2 + before + roomOf(link) / 2;
  };
  return links.flatMap((link) => {
    const [from, to] = [byId.get(link.from), byId.get(link.to)];
    return from && to ? [{ link, x1: from.x + nodeWidth, y1: endAt(from, 'from', link), x2: to.x, y2: endAt(to, 'to', link) }] : [];
  });
}
