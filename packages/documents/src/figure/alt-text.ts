import type { FigureData } from '../lot-record-data';
import type { WallClock } from '../page/wall-clock';

/** A curve in words, for whoever does not see it. */
export function altText(data: FigureData, clock: WallClock): string {
  const { title, unit, series, limits, stages, crossings, arrival, panel } = data;
  const curves = series.flatMap(({ label, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const said = ({ at, value }: typeof first) => `${Math.round(value * 10) / 10} ${unit} at ${clock.dayAndTime(at)}`;
    return [`${label}: ${points.length} readings, from ${said(first)} to ${said(last)}`];
  });
  const bands = stages.map(({ label, spent, missed }) => [label, spent, missed && 'missed'].filter(Boolean).join(', '));
  const lines = limits.map(({ label }) => label).join(', ');
  const passed = (crossings ?? []).map(
    ({ label, after, by }) => `${label} passed between ${clock.dayAndTime(after)} and ${clock.dayAndTime(by)}`,
  );
  const expected = arrival && `${arrival.label} expected from ${clock.dayAndTime(arrival.earliest)}, ${arrival.state}`;
  const added = panel && `${panel.title}: ${panel.lines.map(({ label }) => label).join(', ')}`;
  const said = [title, ...curves, lines && `Limits: ${lines}`, ...bands, ...passed, expected, added];
  return said.filter(Boolean).join('. ');
}
