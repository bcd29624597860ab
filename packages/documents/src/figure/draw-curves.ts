import type { FigureData, FigurePointData } from '../lot-record-data';
import type { Pen } from '../page/pen';
import { inks } from '../page/theme';
import { beginLineOf } from './line-patterns';
import type { Plot } from './plot';
import { thinOut } from './thin-out';

/** Hand-read values are few enough to be shown as what they are: points. */
const mostDots = 60;

/** Finer than half a point no printer shows. */
const finest = 0.5;

/** What the product lies in: fine dots between its readings, no line of a probe. */
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
