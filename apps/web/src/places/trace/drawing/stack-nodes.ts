/** `wanted` is where its top would best be. */
export type Stacked = { height: number; wanted: number };

/**
 * Tops in the given order, never closer than `between`, as near as can be to where each is wanted (least squares:
 * neighbours that would overlap share the middle of their wishes).
 */
export function stackNodes(nodes: readonly Stacked[], between: number): number[] {
  const offsets = nodes.map((_node, i) => nodes.slice(0, i).reduce((sum, { height }) => sum + height + between, 0));
  const blocks: { sum: number; count: number }[] = [];
  for (const [i, { wanted }] of nodes.entries()) {
    let block = { sum: wanted - (offsets[i] ?? 0), count: 1 };
    for (let last = blocks.at(-1); last && mean(last) > mean(block); last = blocks.at(-1)) {
      blocks.pop();
      block = { sum: last.sum + block.sum, count: last.count + block.count };
    }
    blocks.push(block);
  }
  const shifts = blocks.flatMap((block) => Array.from({ length: block.count }, () => mean(block)));
  return offsets.map((offset, i) => offset + (shifts[i] ?? 0));
}

const mean = ({ sum, count }: { sum: number; count: number }): number => sum / count;
