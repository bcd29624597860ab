import type { FigureData } from '../lot-record-data';
import { stack, whole, type Block } from '../page/block';
import { subheading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { altText } from './alt-text';
import { drawAxes, drawLimits, timeAxisHeight } from './draw-axes';
import { drawCurves } from './draw-curves';
import { legend } from './legend';
import { plotAt, plotHeight } from './plot';
import { stageBand } from './stages';

const air = 8;

/** A temperature curve: thin lines, limits ruled across them, a band under them for every stage. */
export function figure(sheet: Sheet, data: FigureData): Block {
  const { pen, area } = sheet;
  const title = subheading(pen, area, data.title);
  return whole(stack([title, asFigure(sheet, data, stack([legend(pen, area, data.series), curves(sheet, data)]))]));
}

/** One picture, with its words for whoever does not see it. */
function asFigure({ pen, area, clock }: Sheet, data: FigureData, { height, draw }: Block): Block {
  return {
    height,
    draw: (top) => pen.tags.element('Figure', () => draw(top), {
      alt: altText(data, clock), bbox: [area.left, top, area.right, top + height],
    }),
  };
}

function curves({ pen, area, clock }: Sheet, data: FigureData): Block {
  const bands = data.stages.map((stage) => stageBand(pen, area, stage));
  const bandsHeight = bands.reduce((sum, { height }) => sum + height, 0);
  return {
    height: air + plotHeight + timeAxisHeight + bandsHeight + air,
    draw(top) {
      const plot = plotAt(data, area, top + air);
      drawAxes(pen, plot, data.unit, clock);
      let y = plot.bottom + timeAxisHeight;
      for (const band of bands) {
        band.draw(plot, y);
        y += band.height;
      }
      drawLimits(pen, plot, data.limits);
      drawCurves(pen, plot, data.series);
    },
  };
}

/** Nothing can be drawn before anything was measured. */
export function hasCurve({ series }: FigureData): boolean {
  return series.some(({ points }) => points.length > 0);
}
