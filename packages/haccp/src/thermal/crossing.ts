import { above, type Bound } from '../quantity/bound';
import type { CurveReading } from './curve';

/**
 * The instant at which a straight line between two readings passes a bound: t1 + (B − T1)(t2 − t1)/(T2 − T1).
 * An estimate, shown beside the worst case; a reading exactly on the bound gives its own instant exactly.
 */
export function crossing(before: CurveReading, after: CurveReading, bound: Bound): number {
  const a = above(before.temperature, bound);
  const b = above(after.temperature, bound);
  if (a === 0) return before.at;
  if (b === 0) return after.at;
  return before.at + ((after.at - before.at) * a) / (a - b);
}

/** Every instant at which the curve falls below a bound, in order: from at or above it to below it. */
export function fallsBelow(readings: readonly CurveReading[], bound: Bound): number[] {
  return crossings(readings, bound, (a, b) => a >= 0 && b < 0);
}

/** Every instant at which the curve comes up to a bound, in order: from below it to at or above it. */
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

/**
 * Milliseconds of a straight line between two readings that lie between two bounds, low < high.
 * Time spent exactly on a bound is not between them.
 */
export function betweenBounds(before: CurveReading, after: CurveReading, low: Bound, high: Bound): number {
  const span = after.at - before.at;
  const overLow = shareAbove(above(before.temperature, low), above(after.temperature, low), 0);
  const overHigh = shareAbove(above(before.temperature, high), above(after.temperature, high), 1);
  return span * Math.max(0, overLow - overHigh);
}

/** Milliseconds of a straight line between two readings at or above a bound. */
export const atOrAbove = (before: CurveReading, after: CurveReading, bound: Bound): number =>
  (after.at - before.at) * shareAbove(above(before.temperature, bound), above(after.temperature, bound), 1);

/** The share of a straight line from a to b that is above zero; `flat` is the answer for a line along zero. */
function shareAbove(a: number, b: number, flat: 0 | 1): number {
  if (a === 0 && b === 0) return flat;
  if (a <= 0 && b <= 0) return 0;
  if (a >= 0 && b >= 0) return 1;
  return a > 0 ? a / (a - b) : b / (b - a);
}
