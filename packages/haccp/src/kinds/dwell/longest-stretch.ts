import { above, type Bound } from '../../quantity/bound';
import type { CurveReading } from '../../thermal/curve';

/** Places in the curve. */
export type Stretch = { first: number; last: number };

/**
 * Its length is the hold that the judges count (thermal/holds); undefined without a reading at or above. @param
 * longestGap ms @param mustRun only the stretch at the end
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

/** Milliseconds. */
export const lengthOf = (readings: readonly CurveReading[], { first, last }: Stretch): number =>
  (readings[last] as CurveReading).at - (readings[first] as CurveReading).at;
