import { sayDegrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import type { RestingOn } from './explanation';

/** A reading of a curve, said as it was taken. */
export function resting(reading: CurveReading | undefined, role: string): RestingOn[] {
  if (!reading) return [];
  const { id, at, probe, temperature } = reading;
  return [{ id, at, probe: probe || undefined, said: sayDegrees(temperature), role }];
}

/** The reading of an instant; undefined where there is none. */
export const readingAtInstant = (readings: readonly CurveReading[], at: number): CurveReading | undefined =>
  readings.find((reading) => reading.at === at);
