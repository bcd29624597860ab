import type { Bound } from '../quantity/bound';
import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';

/** What a person said of a reading in doubt, with a reason that is kept with its record. */
export type Word = 'not of the core' | 'time is right';

/** What the book knows of a reading beside its value and its clock. */
export type AsKept = {
  /**
   * When it was kept, by the server's clock (epoch ms); of a corrected reading when the first of its chain was. Where
   * nothing says it, the order of the array is the order of arrival.
   */
  arrivedAt?: number;
  word?: Word;
};

/** One reading of a series. `at` is epoch milliseconds. */
export type CurveReading = AsKept & { at: number; temperature: Degrees; id?: string; probe?: string };

/** Of one instant the colder and the warmer reading, mostly the same, and both on the common scale. */
export type Instant = { at: number; colder: CurveReading; warmer: CurveReading; cold: number; warm: number };

export function instantWith(reading: CurveReading): Instant {
  const value = onCommonScale(reading.temperature);
  return { at: reading.at, colder: reading, warmer: reading, cold: value, warm: value };
}

/** How far the colder and the warmer lie above (+) or below (−) the bound of their own unit. Exact. */
export const coldOver = ({ cold, colder }: Instant, bound: Bound): number => cold - bound[colder.temperature.unit];
export const warmOver = ({ warm, warmer }: Instant, bound: Bound): number => warm - bound[warmer.temperature.unit];

/** Takes a reading of the same instant in: the colder and the warmer are kept. False when it says something else. */
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
