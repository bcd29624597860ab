import { curveJudgeOf, isCurveLimit } from '../kinds/curve-judges';
import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import type { CriticalLimit } from '../limits/limit';
import type { PrintedTemperature } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';

/** `by` in epoch ms. */
export type Awaited = { target: PrintedTemperature; way: 'cooling' | 'heating'; by?: number };

/**
 * Bottom of the stage of a chill, top of the band of a come-up, coldest row of a hold. Undefined where nothing is left
 * to reach.
 */
export const awaitedUnder = (limit: CriticalLimit, readings: readonly CurveReading[], context: CurveContext): Awaited | undefined =>
  isCurveLimit(limit)
    ? curveJudgeOf(limit).awaited(limit, { readings, context, judged: () => judgeCurve(readings, limit, context) })
    : undefined;
