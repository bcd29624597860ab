import type { Bound } from '../../quantity/bound';
import { onCommonScale } from '../../quantity/convert-degrees';
import type { Degrees } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';

/** Epoch ms: the readings either side are sure, the instants between are estimates. */
export type Passing = {
  after: number;
  by: number;
  straight: number;
  /** Towards the chiller's temperature; only where the interval is long enough to differ. */
  chilled?: number;
};

/** A shorter interval needs no second estimate: common practice, no source. */
const WORTH_ESTIMATING = 30 * 60_000;

/** @param before undefined where no reading at or above the bound comes before */
export function passingOf(
  before: CurveReading | undefined,
  after: CurveReading,
  bound: Bound,
  straight: number,
  chiller: Degrees | undefined,
): Passing {
  const passing = { after: before?.at ?? straight, by: after.at, straight };
  if (!before || !chiller || after.at - before.at <= WORTH_ESTIMATING) return passing;
  return { ...passing, chilled: chilledCrossing(before, after, bound, chiller) };
}

/**
 * Towards a medium at Ta: t1 + (t2 − t1) ln((T1 − Ta)/(B − Ta)) ÷ ln((T1 − Ta)/(T2 − Ta)). The true curve sags below a
 * straight line, so it passes the upper bound earlier. Undefined unless T1 ≥ B ≥ T2 > Ta and T1 > T2.
 */
export function chilledCrossing(before: CurveReading, after: CurveReading, bound: Bound, chiller: Degrees): number | undefined {
  const [t1, t2, b, a] = [
    onCommonScale(before.temperature),
    onCommonScale(after.temperature),
    bound[before.temperature.unit],
    onCommonScale(chiller),
  ];
  if (!(t1 > t2 && t1 >= b && b >= t2 && t2 > a)) return undefined;
  return before.at + ((after.at - before.at) * Math.log((t1 - a) / (b - a))) / Math.log((t1 - a) / (t2 - a));
}
