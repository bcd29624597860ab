import { curveJudgeOf, isCurveLimit } from '../kinds/curve-judges';
import type { CurveContext } from '../limits/curve-context';
import { judgeCurve } from '../limits/judge-curve';
import type { CriticalLimit } from '../limits/limit';
import type { PrintedTemperature } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';

/** The bound that a running stage has still to reach, and by when (epoch ms) where there is a time. */
export type Awaited = { target: PrintedTemperature; way: 'cooling' | 'heating'; by?: number };

/**
 * What the readings of one probe still have to reach under a limit: of a chill the foot of its first stage that goes
 * on, of a come-up the top of its band, of a hold the coldest row of its table. Undefined where nothing is awaited:
 * the limit is met, or missed for good, or knows no temperature to reach.
 */
export const awaitedUnder = (limit: CriticalLimit, readings: readonly CurveReading[], context: CurveContext): Awaited | undefined =>
  isCurveLimit(limit)
    ? curveJudgeOf(limit).awaited(limit, { readings, context, judged: () => judgeCurve(readings, limit, context) })
    : undefined;
