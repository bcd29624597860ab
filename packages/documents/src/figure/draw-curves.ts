import type { FigureData, FigurePointData } from '../lot-record-data';
import type { Pen } from '../page/pen';
import { inks } from '../page/theme';
import { beginLineOf } from './line-patterns';
import type { Plot } from './plot';
import { thinOut } from './thin-out';

/** Values read by hand are few enough to show each as a point. */
const mostDots = 60;

/** No printer shows less than half a point. */
const finest = 0.5;

/** Fine dots tell the surroundings from the line of a probe. */
export function drawSurroundings({ document }: Pen, { x, y }: Plot, points: FigurePointData[]): void {
  const places = points.map(({ at, value }) => ({ x: x(at), y: y(value) }));
  const [first, ...others] = thinOut(places, finest);
  if (!first) return;
  document.save().lineWidth(0.6).strokeColor(inks.soft).addContent('[0.6 2] 0 d');
  document.moveTo(first.x, first.y);
  for (const place of others) document.lineTo(place.x, place.y);
  document.stroke().restore();
  if (places.length > mostDots) return;
  for (const place of places) document.circle(place.x, place.y, 0.9).fill(inks.soft);
}

export function drawCurves({ document }: Pen, { x, y }: Plot, series: FigureData['series']): void {
  for (const [probe, { points }] of series.entries()) {
    const places = points.map(({ at, value }) => ({ x: x(at), y: y(value) }));
    const [first, ...others] = thinOut(places, finest);
    if (!first) continue;
    beginLineOf(document, probe);
    document.moveTo(first.x, first.y);
    for (const place of others) document.lineTo(place.x, place.y);
    document.stroke().restore();
    if (places.length > mostDots) continue;
    for (const place of places) document.circle(place.x, place.y, 1.3).fill(inks.accent);
  }
}
