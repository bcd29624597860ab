import { onCommonScale } from '../quantity/convert-degrees';
import type { Instant } from './instant';

/** A rise of 0.5 °C may be noise of the probe, on the common scale: common practice, no source. */
export const NOISE = onCommonScale({ hundredths: 50, unit: '°C' });

/**
 * Heating, if the first reading since the recorded end is surely hotter than all before. Otherwise the end was recorded
 * late, and the chill runs from the peak.
 */
export type BeforeTheEnd = {
  /** Recorded end of cooking (epoch ms). */
  readonly ended: number | undefined;
  /** Hotter by more than twice the error of a reading and the noise is surely hotter. */
  readonly margin: number;
  hottest: number;
  /** A reading since the recorded end decides what came before. */
  isPast: boolean;
  isLate: boolean;
};

/** @param error of a reading @param noise both on the scale of the readings */
export const beginBeforeTheEnd = (ended: number | undefined, error: number, noise = NOISE): BeforeTheEnd => ({
  ended,
  margin: 2 * error + noise,
  hottest: -Infinity,
  isPast: false,
  isLate: false,
});

/**
 * True where the chill starts again: as hot as any before the recorded end, or the first since and surely hotter.
 * Without a recorded end only the first. Readings come in order of time.
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
