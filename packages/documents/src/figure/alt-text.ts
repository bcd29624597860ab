import type { FigureData } from '../lot-record-data';
import type { WallClock } from '../page/wall-clock';

/** A curve in words, for whoever does not see it. */
export function altText({ title, unit, series, limits, stages }: FigureData, clock: WallClock): string {
  const curves = series.flatMap(({ label, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const said = ({ at, value }: typeof first) => `${Math.round(value * 10) / 10} ${unit} at ${clock.dayAndTime(at)}`;
    return [`${label}: ${points.length} readings, from ${said(first)} to ${said(last)}`];
  });
  const bands = stages.map(({ label, spent, missed }) =>
    [label, spent, missed && 'missed'].filter(Boolean).join(', '));
  const lines = limits.map(({ label }) => label).join(', ');
  return [title, ...curves, lines && `Limits: ${lines}`, ...bands].filter(Boolean).join('. ');
}
