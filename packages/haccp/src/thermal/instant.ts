import type { Bound } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';

/** Given with a reason that is kept with the record. */
export type Word = 'not of the core' | 'time is right';

/** Beside its value and its clock. */
export type AsKept = {
  /**
   * By the server's clock (epoch ms); of a corrected reading, when the first of its chain was kept. Without it the
   * array is in order of arrival.
   */
  arrivedAt?: number;
  word?: Word;
};

/** `at` is epoch milliseconds. */
export type CurveReading = AsKept & { at: number; temperature: Degrees; id?: string; probe?: string };

/** Colder and warmer reading of one instant, mostly the same; `cold` and `warm` on the common scale. */
export type Instant = { at: number; colder: CurveReading; warmer: CurveReading; cold: number; warm: number };

export function instantWith(reading: CurveReading): Instant {
  const value = onCommonScale(reading.temperature);
  return { at: reading.at, colder: reading, warmer: reading, cold: value, warm: value };
}

/** Distance above (+) or below (−) the bound in the reading's own unit. Exact. */
export const coldOver = ({ cold, colder }: Instant, bound: Bound): number => cold - bound[colder.temperature.unit];
export const warmOver = ({ warm, warmer }: Instant, bound: Bound): number => warm - bound[warmer.temperature.unit];

/** False when the reading says something else. */
export function joinInstant(instant: Instant, reading: CurveReading): boolean {
  const value = onCommonScale(reading.temperature);
  const isSame = value === instant.cold && value === instant.warm;
  if (value < instant.cold) {
    instant.colder = reading;
    instant.cold = value;
  }
  if (value > instant.warm) {
    instant.warmer = reading;
    instant.warm = value;
  }
  return isSame;
}
