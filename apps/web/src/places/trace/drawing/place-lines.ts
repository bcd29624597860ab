import { roomOf } from './measures';
import type { SettledNode } from './settle-columns';
import type { TraceLink } from './trace-graph';

export type PlacedNode = SettledNode & { x: number };
/** A line goes from the right edge of one node to the left edge of another. */
export type PlacedLine = { link: TraceLink; x1: number; y1: number; x2: number; y2: number };

/** The ends at a node stand in the order of what they lead to, so that lines do not cross there. */
export function placeLines(links: readonly TraceLink[], nodes: readonly PlacedNode[], nodeWidth: number): PlacedLine[] {
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
