import type { Area } from './area';
import type { Block } from './block';
import type { Pen } from './pen';
import { lines } from './theme';

const outside = 7;
export const frameInset = 6;

/** Only a missed limit has this frame. It stays open where it goes on over the page. */
export function framed(pen: Pen, area: Area, blocks: Block[]): Block[] {
  return blocks.map((block, index) => withSides(pen, area, block, { isFirst: index === 0, isLast: index === blocks.length - 1 }));
}

type Place = { isFirst: boolean; isLast: boolean };

function withSides(pen: Pen, area: Area, block: Block, place: Place): Block {
  const above = place.isFirst ? frameInset : 0;
  const below = place.isLast ? frameInset : 0;
  const height = above + block.height + below;
  return {
    height,
    draw(top) {
      pen.tags.artifact(() => drawSides(pen, area, top, height, place));
      block.draw(top + above);
    },
    split(room) {
      const parts = block.split?.(room - above);
      return (
        parts && [withSides(pen, area, parts[0], { ...place, isLast: false }), withSides(pen, area, parts[1], { ...place, isFirst: false })]
      );
    },
  };
}

function drawSides(pen: Pen, { left, right }: Area, top: number, height: number, { isFirst, isLast }: Place): void {
  const [x1, x2, bottom] = [left - outside, right + outside, top + height];
  const half = lines.heavy.width / 2;
  pen.fill(x1, top, x2 - x1, height, 'paper');
  pen.rule(x1, top, x1, bottom, 'heavy');
  pen.rule(x2, top, x2, bottom, 'heavy');
  if (isFirst) pen.rule(x1 - half, top, x2 + half, top, 'heavy');
  if (isLast) pen.rule(x1 - half, bottom, x2 + half, bottom, 'heavy');
}
