import type { FigurePanelData } from '../lot-record-data';
import type { Pen } from '../page/pen';
import { row } from '../page/row';
import { words } from '../page/words';
import { beginLineOf } from './line-patterns';
import { labelsAt, type Plot } from './plot';
import { scale } from './scale';
import { thinOut } from './thin-out';
import { degreeTicks } from './ticks';
import type { Sheet } from '../page/sheet';

const [plotHeight, above, below] = [64, 14, 6];
/** No printer shows less than half a point. */
const finest = 0.5;

/** Under the curve, on the same time axis and a scale of its own. */
export type AddedUp = { height: number; draw(plot: Plot, top: number): void };

export function addedUp({ pen, area, say }: Pick<Sheet, 'pen' | 'area' | 'say'>, panel: FigurePanelData): AddedUp {
  const names = row(pen, [{ ...labelsAt(area), paragraphs: namesOf(panel, say) }], { above: 0, below: 0 });
  const height = above + Math.max(plotHeight, names.height) + below;
  return {
    height,
    draw(plot, top) {
      pen.write(panel.title, plot.left + 6, top + 9, 'label');
      drawPlot(pen, plot, panel, top + above);
      names.draw(top + above);
    },
  };
}

const patterns = ['full-line', 'dashed', 'dotted'] as const;

const namesOf = ({ lines }: FigurePanelData, say: Sheet['say']) =>
  lines.map(({ label }, index) => words('smallInk', say(patterns[index % patterns.length] ?? 'full-line', { label })));

function drawPlot(pen: Pen, { left, right, x }: Plot, { lines }: FigurePanelData, top: number): void {
  const bottom = top + plotHeight;
  const most = lines.flatMap(({ points }) => points).reduce((high, { value }) => Math.max(high, value), 1);
  const y = scale([0, most], [bottom, top]);
  for (const tick of degreeTicks(0, most, 6)) {
    pen.rule(left, y(tick), right, y(tick), 'hair');
    pen.write(String(tick), left - 8, y(tick) + 2.4, 'label', { align: 'right' });
  }
  pen.rule(left, bottom, right, bottom, 'thin');
  for (const [index, { points }] of lines.entries()) {
    const [first, ...others] = thinOut(
      points.map(({ at, value }) => ({ x: x(at), y: y(value) })),
      finest,
    );
    if (!first) continue;
    beginLineOf(pen.document, index);
    pen.document.moveTo(first.x, first.y);
    for (const place of others) pen.document.lineTo(place.x, place.y);
    pen.document.stroke().restore();
  }
}

/** One point alone draws no line. */
export const hasAddedUp = (panel: FigurePanelData | undefined): panel is FigurePanelData =>
  (panel?.lines ?? []).some(({ points }) => points.length > 1);
