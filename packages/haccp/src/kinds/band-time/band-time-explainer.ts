import type { CrossingDrawn, StageDrawn } from '../../explain/drawing';
import { drawnFigure } from '../../explain/drawn-degrees';
import { governing } from '../../explain/governing';
import { kindDrawn } from '../../explain/kind-drawn';
import { lineAt } from '../../explain/line';
import { above, boundOf } from '../../quantity/bound';
import { printedIn } from '../../quantity/quantities';
import type { PrintedTemperature, TemperatureUnit } from '../../quantity/temperature';
import { risesTo } from '../../thermal/crossing';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import type { Explainer, Governed } from '../explainer';
import { undrawn } from '../undrawn';
import type { BandTimeLimit } from './band-time-limit';
import { explainBandTime } from './explain-band-time';

export const bandTimeExplainer: Explainer<BandTimeLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context }) => explainBandTime(limit, verdict, governing(series.temperatures, verdict), context),
  lines: ({ from, to }, unit) => [lineAt(from, unit, printedIn(from, unit)), lineAt(to, unit, printedIn(to, unit))],
  crossings: ({ from, to }, own, _context, unit) => [from, to].flatMap((figure) => firstRise(figure, own, unit)),
  stretches,
};

function firstRise(figure: PrintedTemperature, own: readonly CurveReading[], unit: TemperatureUnit): CrossingDrawn[] {
  const { colder } = prepareCurve(own);
  const [straight] = risesTo(colder, boundOf(figure));
  if (straight === undefined) return [];
  const next = colder.findIndex(({ at }) => at >= straight);
  const [before, after] = colder.slice(next - 1, next + 1) as [CurveReading, CurveReading];
  const [label, value] = [printedIn(figure, unit), drawnFigure(figure, unit)];
  return [{ label, value, after: before.at, by: after.at, straight }];
}

/** Worst case: from the last reading before the band to the first beyond it. */
function stretches({ from, to, maxSeconds }: BandTimeLimit, own: Governed): StageDrawn[] {
  const { readings, unit } = own;
  const [start, end] = [boundOf(from), boundOf(to)];
  const entered = readings.findIndex(({ temperature }) => above(temperature, start) > 0);
  const startAt = readings[Math.max(0, entered - 1)]?.at;
  if (entered === -1 || startAt === undefined) return [];
  const left = readings.slice(entered).find(({ temperature }) => above(temperature, end) >= 0);
  return [
    {
      label: { from: printedIn(from, unit), to: printedIn(to, unit) },
      startAt,
      endAt: left?.at,
      deadline: startAt + maxSeconds * 1000,
      kind: kindDrawn(own),
    },
  ];
}
