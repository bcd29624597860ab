import { above, type Bound } from '../quantity/bound';
import { betweenBounds } from './crossing';
import type { Curve, CurveReading } from './curve';

/** Milliseconds a curve spent between two temperatures, counted in three ways. */
export type BandTime = {
  /** The longest the readings allow: a segment that may have been inside counts whole. */
  longest: number;
  /** By straight lines between readings. */
  straight: number;
  /**
   * The straight-line time without the segments longer than the longest tolerated gap: what is sure in spite of them.
   */
  straightOutsideGaps: number;
  /** The longest gap that touches the band, when it is longer than tolerated. */
  gap?: number;
};

/** Adds up the segments up to and including the reading `until`. */
export function timeInBand(curve: Curve, low: Bound, high: Bound, longestGap: number, until: number): BandTime {
  const time: BandTime = { longest: 0, straight: 0, straightOutsideGaps: 0 };
  for (let i = 1; i <= until; i += 1) {
    const before = curve.colder[i - 1] as CurveReading;
    const after = curve.colder[i] as CurveReading;
    if (!mayHaveBeenInside(curve, i, low, high)) continue;
    const span = after.at - before.at;
    const straight = betweenBounds(before, after, low, high);
    time.longest += span;
    time.straight += straight;
    if (span <= longestGap) time.straightOutsideGaps += straight;
    else time.gap = Math.max(time.gap ?? 0, span);
  }
  return time;
}

function mayHaveBeenInside({ colder, warmer }: Curve, index: number, low: Bound, high: Bound): boolean {
  const isWarm = isOver(warmer[index - 1], low) || isOver(warmer[index], low);
  const isCold = isUnder(colder[index - 1], high) || isUnder(colder[index], high);
  return isWarm && isCold;
}

const isOver = (reading: CurveReading | undefined, bound: Bound): boolean =>
  reading !== undefined && above(reading.temperature, bound) > 0;
const isUnder = (reading: CurveReading | undefined, bound: Bound): boolean =>
  reading !== undefined && above(reading.temperature, bound) < 0;
