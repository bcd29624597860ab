import { above, type Bound } from '../quantity/bound';
import { betweenBounds } from './crossing';
import type { Curve } from './curve';
import type { CurveReading, Instant } from './instant';

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

/** A band and how it is counted. `error`: a reading may be wrong by so much either way, on the common scale. */
export type Band = { low: Bound; high: Bound; longestGap: number; error: number };

export const noTime = (): BandTime => ({ longest: 0, straight: 0, straightOutsideGaps: 0, gap: undefined });

/** Adds one segment. */
export function addToBandTime(time: BandTime, band: Band, before: Instant, after: Instant): void {
  if (!mayHaveBeenInside(band, before, after)) return;
  const span = after.colder.at - before.colder.at;
  const straight = betweenBounds(before.colder, after.colder, band.low, band.high);
  time.longest += span;
  time.straight += straight;
  if (span <= band.longestGap) time.straightOutsideGaps += straight;
  else time.gap = Math.max(time.gap ?? 0, span);
}

/** Adds up the segments up to and including the reading `until`. */
export function timeInBand(curve: Curve, low: Bound, high: Bound, longestGap: number, until: number): BandTime {
  const time = noTime();
  for (let i = 1; i <= until; i += 1) {
    addToBandTime(time, { low, high, longestGap, error: 0 }, instantOf(curve, i - 1), instantOf(curve, i));
  }
  return time;
}

export const instantOf = ({ colder, warmer }: Curve, index: number): Instant => ({
  colder: colder[index] as CurveReading,
  warmer: warmer[index] as CurveReading,
});

function mayHaveBeenInside({ low, high, error }: Band, before: Instant, after: Instant): boolean {
  const isWarm = isOver(before.warmer, low, error) || isOver(after.warmer, low, error);
  const isCold = isUnder(before.colder, high, error) || isUnder(after.colder, high, error);
  return isWarm && isCold;
}

const isOver = ({ temperature }: CurveReading, bound: Bound, error: number): boolean =>
  above(temperature, bound) > -error;
const isUnder = ({ temperature }: CurveReading, bound: Bound, error: number): boolean =>
  above(temperature, bound) < error;
