import type { Bound } from '../quantity/bound';
import { betweenBounds } from './crossing';
import type { Curve } from './curve';
import { coldOver, instantWith, joinInstant, warmOver, type CurveReading, type Instant } from './instant';

/** In milliseconds. */
export type BandTime = {
  /** Worst case: a segment that may have been inside counts whole. */
  longest: number;
  /** By straight lines between readings. */
  straight: number;
  /** By straight lines, without the gaps longer than tolerated: sure in spite of them. */
  straightOutsideGaps: number;
  /** Longest gap that touches the band, where longer than tolerated. */
  gap?: number;
};

/** `error`: a reading may be wrong by so much either way, on the common scale. */
export type Band = { low: Bound; high: Bound; longestGap: number; error: number };

export const noTime = (): BandTime => ({ longest: 0, straight: 0, straightOutsideGaps: 0, gap: undefined });

export function copyTime(time: BandTime, into: BandTime): BandTime {
  into.longest = time.longest;
  into.straight = time.straight;
  into.straightOutsideGaps = time.straightOutsideGaps;
  into.gap = time.gap;
  return into;
}

export const copyOfTime = (time: BandTime): BandTime => copyTime(time, noTime());

export function addToBandTime(time: BandTime, band: Band, before: Instant, after: Instant): void {
  if (!mayHaveBeenInside(band, before, after)) return;
  const span = after.at - before.at;
  const straight = betweenBounds(before.colder, after.colder, band.low, band.high);
  time.longest += span;
  time.straight += straight;
  if (span <= band.longestGap) time.straightOutsideGaps += straight;
  else time.gap = Math.max(time.gap ?? 0, span);
}

/** @param until index of the last reading, included */
export function timeInBand(curve: Curve, low: Bound, high: Bound, longestGap: number, until: number): BandTime {
  const time = noTime();
  for (let i = 1; i <= until; i += 1) {
    addToBandTime(time, { low, high, longestGap, error: 0 }, instantOf(curve, i - 1), instantOf(curve, i));
  }
  return time;
}

export function instantOf({ colder, warmer }: Curve, index: number): Instant {
  const instant = instantWith(colder[index] as CurveReading);
  const warm = warmer[index] as CurveReading;
  if (warm !== instant.colder) joinInstant(instant, warm);
  return instant;
}

function mayHaveBeenInside({ low, high, error }: Band, before: Instant, after: Instant): boolean {
  return (
    (warmOver(before, low) > -error || warmOver(after, low) > -error) && (coldOver(before, high) < error || coldOver(after, high) < error)
  );
}
