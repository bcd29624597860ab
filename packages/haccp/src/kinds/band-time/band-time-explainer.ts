import type { CrossingDrawn, StageDrawn } from '../../explain/drawing';
import { drawnFigure } from '../../explain/drawn-degrees';
import { governing } from '../../explain/governing';
import { kindDrawn } from '../../explain/kind-drawn';
import { lineAt } from '../../explain/line';
import { boundOf } from '../../quantity/bound';
import { printedIn } from '../../quantity/quantities';
import type { PrintedTemperature, TemperatureUnit } from '../../quantity/temperature';
import { risesTo } from '../../thermal/crossing';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import type { Explainer, Governed } from '../explainer';
import { undrawn } from '../undrawn';
import type { BandTimeLimit } from './band-time-limit';
import { bandCounted } from './band-counted';
import { explainBandTime, spanOf } from './explain-band-time';
import { errorOf } from '../../limits/curve-context';
import { millisecondsOf } from '../../quantity/duration';

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

/** Worst case, as it is judged: the time that counts and what is left of it. */
function stretches(limit: BandTimeLimit, own: Governed): StageDrawn[] {
  const error = errorOf(own.context) as number; // otherwise nothing was judged
  const counted = bandCounted(own.readings, limit, own.context, error);
  const span = counted && spanOf(counted);
  if (!span) return [];
  const { isFinished, time } = counted.passage;
  const { from, to, maxSeconds } = limit;
  return [
    {
      label: { from: printedIn(from, own.unit), to: printedIn(to, own.unit) },
      startAt: span.startAt,
      endAt: isFinished ? span.last.at : undefined,
      deadline: span.last.at + millisecondsOf(maxSeconds) - time.longest,
      kind: kindDrawn(own),
    },
  ];
}
