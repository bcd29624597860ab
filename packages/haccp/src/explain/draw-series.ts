import type { CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import type { CoolingLimit } from '../kinds/cooling/cooling-limit';
import type { Verdict } from '../limits/verdict';
import { boundOf, sayPrinted } from '../quantity/bound';
import type { PrintedTemperature, TemperatureUnit } from '../quantity/temperature';
import { risesTo } from '../thermal/crossing';
import { byProbe, isUsableReading, prepareCurve, type CurveReading } from '../thermal/curve';
import type { Passing } from '../kinds/cooling/passing';
import { coolingOf, type Cooled } from '../kinds/cooling/cooling-of';
import { drawnDegrees, drawnFigure } from './drawn-degrees';
import type { ArrivalDrawn, CrossingDrawn, Drawing, LineDrawn, PointDrawn, StageDrawn } from './drawing';
import { governing } from './explain-series-limit';
import { drawLethality } from './lethality-explained';
import { drawnError, linesOf, withError } from './lines-of';
import { readingAtInstant } from './readings-at';

export type ToDraw = {
  readings: readonly CurveReading[];
  /** Each limit with its verdict: of several probes the one that governs is bracketed. */
  judged: readonly { limit: CriticalLimit; verdict: Verdict }[];
  stages: readonly StageDrawn[];
  context: CurveContext;
  surroundings: readonly CurveReading[];
  arrival?: ArrivalDrawn;
  unit: TemperatureUnit;
};

/** The one picture of a series. What cannot be true is not drawn; the findings name it. */
export function drawSeries({ readings, judged, stages, context, surroundings, arrival, unit }: ToDraw): Drawing {
  const usable = readings.filter(isUsableReading);
  const probes = [...byProbe(usable)].map(([probe, own]) => ({ probe, points: pointsOf(own, unit) }));
  const peak = probes.flatMap(({ points }) => points).reduce((most, { value }) => Math.max(most, value), -Infinity);
  const lines = judged.flatMap(({ limit }) => linesOf(limit, unit, peak));
  const sets = judged.flatMap(({ limit }) => (limit.kind === 'lethality' ? [limit.set] : []));
  const isCook = sets.length > 0 || judged.some(({ limit }) => limit.kind === 'dwell');
  return {
    unit,
    probes: usable.length === 0 ? [] : probes,
    surroundings: pointsOf(surroundings.filter(isUsableReading), unit),
    lines: once(lines).map((line) => withError(line, context.instrumentError, unit)),
    stages: stages.map(({ label, startAt, endAt, deadline, kind }) => ({ label, startAt, endAt, deadline, kind })),
    crossings: judged.flatMap(({ limit, verdict }) => crossingsOf(limit, governing(usable, verdict), context, unit)),
    lethality: isCook && usable.length > 0 ? drawLethality(usable, sets) : [],
    arrival,
  };
}

const pointsOf = (readings: readonly CurveReading[], unit: TemperatureUnit): PointDrawn[] =>
  [...readings].sort((a, b) => a.at - b.at).map(({ at, temperature }) => ({ at, value: drawnDegrees(temperature, unit) }));

const once = (lines: readonly LineDrawn[]): LineDrawn[] => [
  ...new Map(lines.map((line) => [`${line.value} ${line.label}`, line])).values(),
];

function crossingsOf(limit: CriticalLimit, own: readonly CurveReading[], context: CurveContext, unit: TemperatureUnit): CrossingDrawn[] {
  switch (limit.kind) {
    case 'cooling':
      return coolingCrossings(limit, own, context, unit);
    case 'bandTime':
      return [limit.from, limit.to].flatMap((figure) => firstRise(figure, own, unit));
    default:
      return [];
  }
}

function coolingCrossings(
  limit: CoolingLimit,
  own: readonly CurveReading[],
  context: CurveContext,
  unit: TemperatureUnit,
): CrossingDrawn[] {
  const cooled = coolingOf(own, limit, context);
  if (!cooled) return [];
  const allowed = drawnError(context.instrumentError, unit) + A_HUNDREDTH;
  const drawn = (passing: Passing | undefined, figure: PrintedTemperature | undefined, curve: Cooled['colder']) => {
    if (!passing || !figure) return [];
    const value = heightOf(passing, curve, unit);
    const isPassed = Math.abs(value - drawnFigure(figure, unit)) <= allowed;
    return isPassed ? [{ ...passing, label: sayPrinted(figure, unit), value }] : [];
  };
  const all = cooled.spans.flatMap(({ passings, from, to }): CrossingDrawn[] => [
    ...drawn(passings?.start, from, cooled.colder),
    ...drawn(passings?.end, to, cooled.warmer),
  ]);
  return all.filter((one, index) => all.findIndex((other) => isSamePassing(one, other)) === index);
}

/** The end of one stage is the start of the next: it is marked once. */
const isSamePassing = (one: CrossingDrawn, other: CrossingDrawn): boolean =>
  one.label === other.label && (one.by === other.by || one.straight === other.straight);

const A_HUNDREDTH = 0.011;

/**
 * Where the curve is at the instant of a passing. A stage that begins before its readings, or with a record, passes
 * nothing there: a mark would stand where the curve is not.
 */
function heightOf({ after, by, straight }: Passing, curve: readonly CurveReading[], unit: TemperatureUnit): number {
  const [before, next] = [readingAtInstant(curve, after), readingAtInstant(curve, by)];
  if (!before || !next) return NaN;
  const [a, b] = [drawnDegrees(before.temperature, unit), drawnDegrees(next.temperature, unit)];
  return after === by ? b : a + ((b - a) * (straight - after)) / (by - after);
}

/** Where the core first came up to a figure, between the two readings either side. */
function firstRise(figure: PrintedTemperature, own: readonly CurveReading[], unit: TemperatureUnit): CrossingDrawn[] {
  const { colder } = prepareCurve(own);
  const [straight] = risesTo(colder, boundOf(figure));
  if (straight === undefined) return [];
  const next = colder.findIndex(({ at }) => at >= straight);
  const [before, after] = colder.slice(next - 1, next + 1) as [CurveReading, CurveReading];
  const [label, value] = [sayPrinted(figure, unit), drawnFigure(figure, unit)];
  return [{ label, value, after: before.at, by: after.at, straight }];
}
