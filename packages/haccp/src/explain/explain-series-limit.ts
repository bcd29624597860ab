import type { CurveContext } from '../limits/curve-context';
import type { Series } from '../limits/judge-series';
import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import { explainBandTime } from '../kinds/band-time/explain-band-time';
import { explainByVerdict } from './explain-by-verdict';
import { explainCooling } from '../kinds/cooling/explain-cooling';
import { explainDegreeHours } from '../kinds/degree-hours/explain-degree-hours';
import { explainDwell } from '../kinds/dwell/explain-dwell';
import { explainFreezing } from '../kinds/freezing/explain-freezing';
import { explainGrowthLimit } from '../kinds/growth/explain-growth-limit';
import { explainLethalityLimit } from '../kinds/lethality/explain-lethality-limit';
import { explainWeightLoss } from '../kinds/weight-loss/explain-weight-loss';
import type { Explanation, SayTime, WorkedOut } from './explanation';
import { explanationOf } from './explanation-of';

/** How a series was judged against one limit: by the probe that governs, which is the one the verdict names. */
export const explainSeriesLimit = (
  limit: CriticalLimit,
  verdict: Verdict,
  series: Series,
  context: CurveContext,
  say: SayTime,
): Explanation => explanationOf(limit, verdict, workedOut(limit, verdict, series, context, say));

function workedOut(
  limit: CriticalLimit,
  verdict: Verdict,
  { temperatures, acid, weights }: Series,
  context: CurveContext,
  say: SayTime,
): WorkedOut {
  const own = governing(temperatures, verdict);
  switch (limit.kind) {
    case 'dwell':
      return explainDwell(limit, verdict, own, context, say);
    case 'cooling':
      return explainCooling(limit, verdict, own, context, say);
    case 'bandTime':
      return explainBandTime(limit, verdict, own, context, say);
    case 'lethality':
      return explainLethalityLimit(limit, verdict, own, context, say);
    case 'growth':
      return explainGrowthLimit(limit, verdict, own, context);
    case 'degreeHours':
      return explainDegreeHours(limit, verdict, own, acid, context, say);
    case 'weightLoss':
      return explainWeightLoss(limit, verdict, governing(weights, verdict));
    case 'freezing':
      return explainFreezing(limit, verdict, own, say);
    default:
      return explainByVerdict(verdict);
  }
}

/** The readings of the probe whose verdict it is; all of them where there is only one. */
export const governing = <Reading extends { probe?: string }>(readings: readonly Reading[], { probe }: Verdict): Reading[] =>
  readings.filter((reading) => probe === undefined || (reading.probe ?? '') === probe);
