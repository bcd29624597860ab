export type Block = {
  height: number;
  draw(top: number): void;
  /** The first part is at most `room` high; undefined when it cannot be cut. */
  split?(room: number): [Block, Block] | undefined;
  /** Left out at the top of a page. */
  isGap?: boolean;
};

export function gap(height: number): Block {
  return { height, isGap: true, draw: () => undefined };
}

export const whole = ({ height, draw }: Block): Block => ({ height, draw });

export function stack(blocks: Block[]): Block {
  return {
    height: blocks.reduce((sum, { height }) => sum + height, 0),
    draw(top) {
      let y = top;
      for (const block of blocks) {
        block.draw(y);
        y += block.height;
      }
    },
    split: (room) => splitStack(blocks, room),
  };
}

function splitStack(blocks: Block[], room: number): [Block, Block] | undefined {
  let used = 0;
  for (const [index, block] of blocks.entries()) {
    if (used + block.height <= room) {
      used += block.height;
      continue;
    }
    const parts = block.split?.(room - used);
    const before = blocks.slice(0, index);
    const after = blocks.slice(index + 1);
    if (parts) return [stack([...before, parts[0]]), stack([parts[1], ...after])];
    return index === 0 ? undefined : [stack(before), stack(blocks.slice(index))];
  }
  return undefined;
}
