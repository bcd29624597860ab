import type { FigureData } from '../lot-record-data';
import type { Telling } from '../page/telling';

export function altText(data: FigureData, { clock, say }: Telling): string {
  const { title, unit, series, limits, stages, crossings, arrival, panel } = data;
  const curves = series.flatMap(({ label, points }) => {
    const [first, last] = [points[0], points.at(-1)];
    if (!first || !last) return [];
    const said = ({ at, value }: typeof first) =>
      say('reading-at', { value: String(Math.round(value * 10) / 10), unit, at: clock.dayAndTime(at) });
    return [say('curve-runs', { label, count: points.length, first: said(first), last: said(last) })];
  });
  const bands = stages.map(({ label, spent, missed }) => [label, spent, missed && say('missed')].filter(Boolean).join(', '));
  const lines = limits.map(({ label }) => label).join(', ');
  const passed = (crossings ?? []).map(({ label, after, by }) =>
    say('passed-between', { label, after: clock.dayAndTime(after), by: clock.dayAndTime(by) }),
  );
  const expected = arrival && say('expected-from', { label: arrival.label, at: clock.dayAndTime(arrival.earliest), state: arrival.state });
  const added = panel && say('title-of-lines', { title: panel.title, lines: panel.lines.map(({ label }) => label).join(', ') });
  const said = [title, ...curves, lines && say('limits-are', { limits: lines }), ...bands, ...passed, expected, added];
  return said.filter(Boolean).join('. ');
}
