import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';

/** One reading of a series. `at` is epoch milliseconds. */
export type CurveReading = { at: number; temperature: Degrees; id?: string; probe?: string };

/** Of one instant the colder and the warmer reading; mostly the same. */
export type Instant = { colder: CurveReading; warmer: CurveReading };

/** Takes a reading of the same instant in: the colder and the warmer are kept. False when it says something else. */
export function joinInstant(instant: Instant, reading: CurveReading): boolean {
  const value = onCommonScale(reading.temperature);
  const [cold, warm] = [onCommonScale(instant.colder.temperature), onCommonScale(instant.warmer.temperature)];
  if (value < cold) instant.colder = reading;
  if (value > warm) instant.warmer = reading;
  return value === cold && value === warm;
}
