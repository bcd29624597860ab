import { isCurveLimit } from '../kinds/curve-judges';
import { isWholeLimit, seriesJudgeOf } from '../kinds/series-judges';
import { clockOfSeries } from './clock-of-series';
import { usableContext, type CurveContext } from './curve-context';
import { judgeBesideSurroundings } from './judge-beside-surroundings';
import type { CriticalLimit, SeriesLimit, WholeLimit } from './limit';
import { notedClock } from './noted-doubts';
import type { Series } from './series';
import { unusableBefore, unusableSeries } from './unusable-series';
import type { Verdict } from './verdict';
import { withClockDoubt } from './with-clock-doubt';

/** Core temperatures take one pass. Never throws. */
export function judgeSeries(series: Series, limits: readonly SeriesLimit[], context: CurveContext): Verdict[] {
  const ofCurve = judgeBesideSurroundings(series.temperatures, limits.filter(isCurveLimit), context);
  let next = 0;
  return limits.map((limit) => (isCurveLimit(limit) ? (ofCurve[next++] as Verdict) : judgeWhole(series, limit, context)));
}

export const isSeriesLimit = (limit: CriticalLimit): limit is SeriesLimit => isCurveLimit(limit) || isWholeLimit(limit);

function judgeWhole(series: Series, limit: WholeLimit, context: CurveContext): Verdict {
  const fault = unusableBefore(series.temperatures.length, context);
  if (fault) return unusableSeries(fault);
  const { judge, readFrom } = seriesJudgeOf(limit);
  const verdict = judge(series, limit, context);
  const doubts = clockOfSeries(readFrom(series), usableContext(context).now);
  return withClockDoubt({ ...verdict, notes: [...verdict.notes, ...notedClock(doubts)] }, doubts);
}
