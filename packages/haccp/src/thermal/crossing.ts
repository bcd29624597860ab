import { above, type Bound } from '../quantity/bound';
import type { CurveReading } from './curve';

/**
 * Straight line between two readings: t1 + (B − T1)(t2 − t1)/(T2 − T1). An estimate, shown beside the worst case; exact
 * for a reading on the bound.
 */
export function crossing(before: CurveReading, after: CurveReading, bound: Bound): number {
  const a = above(before.temperature, bound);
  const b = above(after.temperature, bound);
  if (a === 0) return before.at;
  if (b === 0) return after.at;
  return before.at + ((after.at - before.at) * a) / (a - b);
}

/** From at or above the bound to below it, in order. */
export function fallsBelow(readings: readonly CurveReading[], bound: Bound): number[] {
  return crossings(readings, bound, (a, b) => a >= 0 && b < 0);
}

/** From below the bound to at or above it, in order. */
export function risesTo(readings: readonly CurveReading[], bound: Bound): number[] {
  return crossings(readings, bound, (a, b) => a < 0 && b >= 0);
}

function crossings(readings: readonly CurveReading[], bound: Bound, isCrossed: (before: number, after: number) => boolean): number[] {
  const instants: number[] = [];
  for (let i = 1; i < readings.length; i += 1) {
    const before = readings[i - 1] as CurveReading;
    const after = readings[i] as CurveReading;
    if (isCrossed(above(before.temperature, bound), above(after.temperature, bound))) {
      instants.push(crossing(before, after, bound));
    }
  }
  return instants;
}

/** Milliseconds of a straight line between readings; low < high. Time exactly on a bound does not count. */
export function betweenBounds(before: CurveReading, after: CurveReading, low: Bound, high: Bound): number {
  const span = after.at - before.at;
  const overLow = shareAbove(above(before.temperature, low), above(after.temperature, low), 0);
  const overHigh = shareAbove(above(before.temperature, high), above(after.temperature, high), 1);
  return span * Math.max(0, overLow - overHigh);
}

/** Milliseconds of a straight line between readings. */
export const atOrAbove = (before: CurveReading, after: CurveReading, bound: Bound): number =>
  (after.at - before.at) * shareAbove(above(before.temperature, bound), above(after.temperature, bound), 1);

/** Share of a straight line above zero; `flat` is the answer for a line along zero. */
function shareAbove(a: number, b: number, flat: 0 | 1): number {
  if (a === 0 && b === 0) return flat;
  if (a <= 0 && b <= 0) return 0;
  if (a >= 0 && b >= 0) return 1;
  return a > 0 ? a / (a - b) : b / (b - a);
}
