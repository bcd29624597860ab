import { measures, roomOf } from './measures';
import type { TraceGraph, TraceLink, TraceNode } from './trace-graph';
import { wrapWords } from './wrap-words';

export type MeasuredNode = TraceNode & { height: number; isStart: boolean; titleLines: string[]; textLines: string[] };

/** A node is as tall as its words or the lines ending at it need, and never too low for a finger. */
export function measureNode(node: TraceNode, { startId, links }: TraceGraph, nodeWidth: number): MeasuredNode {
  const { padding, titleLine, textLine, titleLetter, textLetter, leastHeight } = measures;
  const inner = nodeWidth - 2 * padding;
  const titleLines = wrapWords(node.title, Math.floor(inner / titleLetter), 3);
  const textLines = node.lines.flatMap((line) => wrapWords(line, Math.floor(inner / textLetter), 2));
  const words = 2 * padding + titleLines.length * titleLine + textLines.length * textLine;
  const ends = Math.max(roomFor(links.filter(({ to }) => to === node.id)), roomFor(links.filter(({ from }) => from === node.id)));
  return { ...node, isStart: node.id === startId, titleLines, textLines, height: Math.max(words, ends, leastHeight) };
}

const roomFor = (links: TraceLink[]): number => links.reduce((sum, link) => sum + roomOf(link), measures.padding);
