import { onCommonScale } from '../quantity/convert-degrees';
import type { Instant } from './instant';

/** So much of a rise may be the noise of a probe (0.5 °C, on the common scale): common practice, no source. */
export const NOISE = onCommonScale({ hundredths: 50, unit: '°C' });

/**
 * What was read before the recorded end of cooking: heating, where the first reading since is surely hotter than all of
 * it. Otherwise the core was falling already and the end was written down late: from its peak on it is the chill.
 */
export type BeforeTheEnd = {
  /** The recorded end of cooking (epoch ms). */
  readonly ended: number | undefined;
  /** Hotter by more than this is surely hotter: twice what a reading may be wrong by, and the noise. */
  readonly margin: number;
  hottest: number;
  /** A reading since the recorded end is there: what came before is decided. */
  isPast: boolean;
  isLate: boolean;
};

/** @param error what a reading may be wrong by, @param noise both on the scale of the readings to come */
export const beginBeforeTheEnd = (ended: number | undefined, error: number, noise = NOISE): BeforeTheEnd => ({
  ended,
  margin: 2 * error + noise,
  hottest: -Infinity,
  isPast: false,
  isLate: false,
});

/**
 * Adds one reading, later than all before. True where the chill is counted from it anew: it is as hot as any before the
 * recorded end, or the first since and surely hotter; without a recorded end it is the very first.
 */
export function beginsAnew(before: BeforeTheEnd, { at, cold, warm }: Pick<Instant, 'at' | 'cold' | 'warm'>): boolean {
  if (before.isPast) return false;
  before.isPast = before.ended === undefined || at >= before.ended;
  if (before.isPast) {
    before.isLate = cold <= before.hottest + before.margin;
    return !before.isLate;
  }
  before.isLate = true;
  const isPeak = cold >= before.hottest;
  before.hottest = Math.max(before.hottest, warm);
  return isPeak;
}

export const copyOfBeforeTheEnd = (before: BeforeTheEnd): BeforeTheEnd => ({
  ended: before.ended,
  margin: before.margin,
  hottest: before.hottest,
  isPast: before.isPast,
  isLate: before.isLate,
});
