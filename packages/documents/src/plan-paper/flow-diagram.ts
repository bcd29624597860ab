import type { PlanStepData } from '../plan-paper-data';
import type { Block } from '../page/block';
import type { Pen } from '../page/pen';
import { row } from '../page/row';
import type { Sheet } from '../page/sheet';
import { inks } from '../page/theme';
import { given, words } from '../page/words';
import { drawBadges, badgeHeight } from './badges';

const across = 3;
/** Points for an arrow between two boxes, and between two rows. */
const [between, below] = [26, 20];
const inset = 7;

type Box = { number: number; x: number; width: number; words: Block; step: PlanStepData };

/** Steps stand in reading order; control points hang in the box of their step. */
export function flowDiagram({ pen, area, say }: Sheet, steps: PlanStepData[]): Block[] {
  const width = (area.right - area.body - (across - 1) * between) / across;
  const boxes = steps.map((step, index): Box => {
    const x = area.body + (index % across) * (width + between);
    const said = given(words('label', `${index + 1}`), words('smallStrong', step.name));
    const cell = { x: x + inset, width: width - 2 * inset, paragraphs: said };
    return { number: index + 1, x, width, step, words: row(pen, [cell], { above: 4, below: 5 }) };
  });
  const rows = Array.from({ length: Math.ceil(boxes.length / across) }, (_each, index) =>
    boxes.slice(index * across, (index + 1) * across),
  );
  return rows.map((each, index) => rowOfBoxes({ pen, say }, each, { isFirst: index === 0, from: rows[index - 1]?.at(-1) }));
}

function rowOfBoxes(
  { pen, say }: Pick<Sheet, 'pen' | 'say'>,
  boxes: Box[],
  { isFirst, from }: { isFirst: boolean; from: Box | undefined },
): Block {
  const above = isFirst ? 4 : below;
  const heights = boxes.map(({ words: said, step }) => said.height + (step.points.length ? badgeHeight : 0));
  const high = Math.max(...heights);
  return {
    height: above + high,
    draw: (top) =>
      pen.tags.element(
        'Figure',
        () => {
          const y = top + above;
          for (const [index, box] of boxes.entries()) {
            drawBox(pen, box, y, high);
            const next = boxes[index + 1];
            if (next)
              arrow(pen, [
                [box.x + box.width, y + high / 2],
                [next.x, y + high / 2],
              ]);
          }
          if (from && boxes[0]) fromRowAbove(pen, from, boxes[0], top, y);
        },
        { alt: altText(boxes, say) },
      ),
  };
}

const altText = (boxes: Box[], say: Sheet['say']) =>
  boxes
    .map(({ number, step: { name, points } }) =>
      [say('step-number', { number: String(number), name }), ...points.map((point) => point.number)].join(', '),
    )
    .join('; ');

function drawBox(pen: Pen, { x, width, words: said, step }: Box, top: number, height: number): void {
  const isCritical = step.points.some(({ critical }) => critical);
  const line = isCritical ? 'firm' : 'thin';
  pen.rule(x, top, x + width, top, line);
  pen.rule(x, top + height, x + width, top + height, line);
  pen.rule(x, top, x, top + height, line);
  pen.rule(x + width, top, x + width, top + height, line);
  said.draw(top);
  drawBadges(pen, step.points, x + inset, top + height - badgeHeight);
}

/** Down from the last box of the row above, left, and down. */
function fromRowAbove(pen: Pen, from: Box, to: Box, top: number, y: number): void {
  const [x1, x2] = [from.x + from.width / 2, to.x + to.width / 2];
  const middle = top + (y - top) / 2 - 1;
  arrow(pen, [
    [x1, top],
    [x1, middle],
    [x2, middle],
    [x2, y],
  ]);
}

type Place = readonly [x: number, y: number];

function arrow(pen: Pen, places: Place[]): void {
  for (const [index, [x, y]] of places.entries()) {
    const next = places[index + 1];
    if (next) pen.rule(x, y, next[0], next[1], 'flow');
  }
  const [[fromX, fromY] = [0, 0], [x, y] = [0, 0]] = places.slice(-2);
  const [along, down] = [Math.sign(x - fromX), Math.sign(y - fromY)];
  const [long, half] = [5, 2.4];
  pen.document
    .moveTo(x, y)
    .lineTo(x - along * long - down * half, y - down * long - along * half)
    .lineTo(x - along * long + down * half, y - down * long + along * half)
    .fill(inks.ink);
}
