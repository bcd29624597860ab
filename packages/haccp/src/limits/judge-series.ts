import type { AcidReading } from '../kinds/degree-hours/acid-reached';
import { sayErrors } from '../instruments/instrument-errors';
import { lessAcid } from '../kinds/degree-hours/less-acid';
import { judgeFermentation } from '../kinds/degree-hours/judge-fermentation';
import { judgeFreezing } from '../kinds/freezing/judge-freezing';
import { forecastDrying } from '../kinds/weight-loss/forecast-drying';
import { judgeWeightLoss } from '../kinds/weight-loss/judge-weight-loss';
import { byProbe, type CurveReading } from '../thermal/curve';
import { warmedBy } from '../thermal/warmed-by';
import type { AsKept } from '../thermal/instant';
import { millisecondsOf } from '../quantity/duration';
import { clockOfSeries } from './clock-of-series';
import { errorOf, usableContext, type CurveContext } from './curve-context';
import { judgeBesideSurroundings } from './judge-beside-surroundings';
import type { CriticalLimit, CurveLimit, SeriesLimit } from './limit';
import type { DegreeHoursLimit } from '../kinds/degree-hours/fermentation-limit';
import type { FreezingLimit } from '../kinds/freezing/freezing-limit';
import type { WeightLossLimit } from '../kinds/weight-loss/weight-loss-limit';
import { sayClock } from './say-doubted';
import { unusableBefore, unusableSeries } from './unusable-series';
import type { Verdict } from './verdict';
import { withClockDoubt } from './with-clock-doubt';
import { worstVerdict } from './worst-verdict';

/** The weight of one marked piece, or of the whole lot, at one time; of several pieces each is its own probe. */
export type WeightReading = AsKept & { at: number; mass: bigint; id?: string; probe?: string };

/** What was read over time at one control point, each kind apart. Limits take what they are judged from. */
export type Series = {
  temperatures: readonly CurveReading[];
  acid: readonly AcidReading[];
  weights: readonly WeightReading[];
};

/** A verdict for each limit; those on the core's temperatures in one pass. Nothing given makes it throw. */
export function judgeSeries(series: Series, limits: readonly SeriesLimit[], context: CurveContext): Verdict[] {
  const ofCurve = judgeBesideSurroundings(series.temperatures, limits.filter(isCurveLimit), context);
  let next = 0;
  return limits.map((limit) => (isCurveLimit(limit) ? (ofCurve[next++] as Verdict) : judgeWhole(series, limit, context)));
}

const isCurveLimit = (limit: CriticalLimit): limit is CurveLimit =>
  ['dwell', 'cooling', 'bandTime', 'lethality', 'growth'].includes(limit.kind);

export const isSeriesLimit = (limit: CriticalLimit): limit is SeriesLimit =>
  isCurveLimit(limit) || ['degreeHours', 'weightLoss', 'freezing'].includes(limit.kind);

type WholeLimit = Exclude<SeriesLimit, CurveLimit>;

function judgeWhole(series: Series, limit: WholeLimit, context: CurveContext): Verdict {
  const fault = unusableBefore(series.temperatures.length, context);
  if (fault) return unusableSeries(limit, fault);
  const verdict = judgeAsRead(series, limit, context);
  const doubts = clockOfSeries(series, limit.kind, usableContext(context).now);
  return withClockDoubt({ ...verdict, notes: [...verdict.notes, ...sayClock(doubts)] }, doubts);
}

function judgeAsRead(series: Series, limit: WholeLimit, context: CurveContext): Verdict {
  switch (limit.kind) {
    case 'degreeHours':
      return judgeChambers({ ...series, acid: lessAcid(series.acid, context.acidError) }, limit, context);
    case 'weightLoss':
      return judgePieces(series.weights, limit, context);
    case 'freezing':
      return judgeFrozen(warmedBy(errorOf(context) as number, series.temperatures), limit, context);
  }
}

/** Every probe of the chamber by itself: the worst governs. Without a recorded start nothing is met. */
function judgeChambers({ temperatures, acid }: Series, limit: DegreeHoursLimit, context: CurveContext): Verdict {
  const { startAt, ended, acidError } = usableContext(context);
  const allowed = acidError ? sayErrors({ pH: acidError }).map((said) => `An error of ${said} is allowed for.`) : [];
  return worstOf(
    [...byProbe(temperatures)].map(([probe, chamber]) => {
      const verdict = judgeFermentation({ chamber, error: errorOf(context), acid, startAt, ended }, limit);
      return [probe, { ...verdict, notes: [...verdict.notes, ...allowed] }];
    }),
  );
}

/** Every marked piece by itself: the one that has lost least governs. */
function judgePieces(weights: readonly WeightReading[], limit: WeightLossLimit, context: CurveContext): Verdict {
  const { ended, scaleError } = context;
  return worstOf(
    [...byProbe(weights)].map(([probe, own]) => {
      const verdict = judgeWeightLoss(own, limit, ended, scaleError);
      const isDrying = verdict.kind === 'undetermined' && !ended && own.length > 0;
      return [probe, isDrying ? { ...verdict, notes: [...verdict.notes, ...sayArrival(own, limit)] } : verdict];
    }),
  );
}

/** The day the loss will be there, counted from the last weighing. */
function sayArrival(own: readonly WeightReading[], { percent }: WeightLossLimit): string[] {
  const { state, because, next } = forecastDrying(own, percent);
  if (state === 'too early to tell') return [`When it will be there: too early to tell. ${because} ${next}`];
  return state === 'undetermined' ? [] : [`By the weighings, from the last one on: ${because} Advice, never acceptance.`];
}

function judgeFrozen(readings: readonly CurveReading[], limit: FreezingLimit, context: CurveContext): Verdict {
  const { startAt, ended } = usableContext(context);
  const freezing = { read: limit.read, readings, startAt, ended };
  const verdict = judgeFreezing(freezing, millisecondsOf(limit.longestGapSeconds));
  return { ...verdict, source: limit.source };
}

function worstOf(byName: (readonly [probe: string, verdict: Verdict])[]): Verdict {
  const named = byName.map(([probe, verdict]) => (probe ? { ...verdict, probe } : verdict));
  const worst = worstVerdict(named);
  if (named.length === 1) return worst;
  const governs = `${worst.probe ?? 'The one without a name'} governs: the worst of ${named.length}.`;
  return { ...worst, notes: [governs, ...worst.notes] };
}
