import { coded } from '../limits/coded';
import type { Figures } from '../limits/verdict';
import { degreesOf } from '../quantity/quantities';
import type { CurveReading } from '../thermal/curve';
import type { RestingOn } from './explanation';

export function resting(reading: CurveReading | undefined, role: string, figures?: Figures): RestingOn[] {
  if (!reading) return [];
  const { id, at, probe, temperature } = reading;
  return [{ id, at, probe: probe || undefined, is: degreesOf(temperature), role: coded(role, figures) }];
}

export const readingAtInstant = (readings: readonly CurveReading[], at: number): CurveReading | undefined =>
  readings.find((reading) => reading.at === at);
