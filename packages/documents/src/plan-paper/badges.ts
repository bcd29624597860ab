import type { PlanStepData } from '../plan-paper-data';
import type { Pen } from '../page/pen';

/** Points at the foot of a box. */
export const badgeHeight = 16;
const [high, inset, blank] = [11.5, 4, 4];

/** Black and white tells them apart: critical is white on ink, a prerequisite framed. */
export function drawBadges(pen: Pen, points: PlanStepData['points'], left: number, top: number): void {
  let x = left;
  for (const { number, critical } of points) {
    const width = pen.width(number, 'badge') + 2 * inset;
    pen.fill(x, top, width, high, critical ? 'ink' : 'paper');
    pen.rule(x, top, x + width, top, 'thin');
    pen.rule(x, top + high, x + width, top + high, 'thin');
    pen.rule(x, top, x, top + high, 'thin');
    pen.rule(x + width, top, x + width, top + high, 'thin');
    pen.write(number, x + inset, top + 8.3, critical ? 'badge' : 'smallStrong');
    x += width + blank;
  }
}
