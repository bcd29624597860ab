import type { FigureData } from '../lot-record-data';
import { stack, whole, type Block } from '../page/block';
import { subheading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { addedUp, hasAddedUp } from './added-up';
import { altText } from './alt-text';
import { drawArrival } from './draw-arrival';
import { drawAxes, drawLimits, timeAxisHeight } from './draw-axes';
import { drawCrossings } from './draw-crossings';
import { drawCurves, drawSurroundings } from './draw-curves';
import { key } from './key';
import { legend } from './legend';
import { plotAt, plotHeight } from './plot';
import { stageBand } from './stages';

const air = 8;

export function figure(sheet: Sheet, data: FigureData): Block {
  const { pen, area } = sheet;
  const title = subheading(pen, area, data.title);
  const drawn = stack([legend(pen, area, data.series), curves(sheet, data), key(sheet, data)]);
  return whole(stack([title, asFigure(sheet, data, drawn)]));
}

/** The whole picture has one text for whoever does not see it. */
function asFigure(sheet: Sheet, data: FigureData, { height, draw }: Block): Block {
  const { pen, area } = sheet;
  return {
    height,
    draw: (top) =>
      pen.tags.element('Figure', () => draw(top), {
        alt: altText(data, sheet),
        bbox: [area.left, top, area.right, top + height],
      }),
  };
}

function curves(sheet: Sheet, data: FigureData): Block {
  const { pen, area, clock } = sheet;
  const bands = data.stages.map((stage) => stageBand(sheet, stage));
  if (hasAddedUp(data.panel)) bands.push(addedUp(sheet, data.panel));
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
      if (data.arrival) drawArrival(pen, plot, data.arrival);
      drawLimits(pen, plot, data.limits);
      drawSurroundings(pen, plot, data.surroundings ?? []);
      drawCurves(pen, plot, data.series);
      drawCrossings(pen, plot, data.crossings ?? []);
    },
  };
}

export function hasCurve({ series }: FigureData): boolean {
  return series.some(({ points }) => points.length > 0);
}
