import { sayDegrees } from '../quantity/degrees';
import type { CurveReading } from '../thermal/curve';
import type { RestingOn } from './explanation';

/** A reading of a curve, said as it was taken. */
export const resting = (reading: CurveReading | undefined, role: string): RestingOn[] =>
  reading
    ? [{ id: reading.id, at: reading.at, probe: reading.probe || undefined, said: sayDegrees(reading.temperature), role }]
    : [];

/** The reading of an instant among readings in order of time; undefined where there is none. */
export const readingAtInstant = (readings: readonly CurveReading[], at: number | undefined): CurveReading | undefined =>
  at === undefined ? undefined : readings.find((reading) => reading.at === at);
