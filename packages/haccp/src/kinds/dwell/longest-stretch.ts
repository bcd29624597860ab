import { above, type Bound } from '../../quantity/bound';
import type { CurveReading } from '../../thermal/curve';

/** Places of the first and the last reading of a stretch in its curve. */
export type Stretch = { first: number; last: number };

/**
 * The longest stretch of readings that are all at or above a bound, none further apart than tolerated; undefined where
 * no reading is. Its length is the hold the judges count (thermal/holds). While a hold runs, the stretch at the end.
 * @param longestGap ms
 */
export function longestStretch(readings: readonly CurveReading[], bound: Bound, longestGap: number, mustRun = false): Stretch | undefined {
  let best: Stretch | undefined;
  let own: Stretch | undefined;
  readings.forEach(({ at, temperature }, index) => {
    const isAbove = above(temperature, bound) >= 0;
    const goesOn = own && at - (readings[own.last] as CurveReading).at <= longestGap;
    own = isAbove ? { first: goesOn && own ? own.first : index, last: index } : undefined;
    if (own && !(best && lengthOf(readings, best) >= lengthOf(readings, own))) best = own;
  });
  return mustRun ? own : best;
}

/** Milliseconds from the first to the last reading of a stretch. */
export const lengthOf = (readings: readonly CurveReading[], { first, last }: Stretch): number =>
  (readings[last] as CurveReading).at - (readings[first] as CurveReading).at;
