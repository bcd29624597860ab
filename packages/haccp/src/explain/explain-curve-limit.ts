import type { CurveContext } from '../limits/curve-context';
import type { CriticalLimit } from '../limits/limit';
import type { Verdict } from '../limits/verdict';
import type { CurveReading } from '../thermal/curve';
import { explainBandTime } from './explain-band-time';
import { explainByVerdict } from './explain-by-verdict';
import { explainCooling } from './explain-cooling';
import { explainDwell } from './explain-dwell';
import type { Explanation, SayTime } from './explanation';
import { explanationOf } from './explanation-of';

/** How a series was judged against one limit: by the probe that governs, which is the one the verdict names. */
export function explainCurveLimit(
  limit: CriticalLimit,
  verdict: Verdict,
  readings: readonly CurveReading[],
  context: CurveContext,
  say: SayTime,
): Explanation {
  const own = governing(readings, verdict);
  switch (limit.kind) {
    case 'dwell':
      return explanationOf(limit, verdict, explainDwell(limit, verdict, own, context, say));
    case 'cooling':
      return explanationOf(limit, verdict, explainCooling(limit, verdict, own, context, say));
    case 'bandTime':
      return explanationOf(limit, verdict, explainBandTime(limit, verdict, own, context, say));
    default:
      return explanationOf(limit, verdict, explainByVerdict(verdict));
  }
}

/** The readings of the probe whose verdict it is; all of them where there is only one. */
export const governing = (readings: readonly CurveReading[], { probe }: Verdict): CurveReading[] =>
  readings.filter((reading) => probe === undefined || (reading.probe ?? '') === probe);
