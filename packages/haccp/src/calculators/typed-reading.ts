import { sayDuration } from '../quantity/duration';
import { degrees, sayDegrees } from '../quantity/degrees';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import type { Fact } from './calculation';

/** A reading typed without a lot: minutes since the first. */
export type TypedReading = { minutes: number; value: number };

const MINUTE = 60_000;

/** Typed readings as a curve that begins at instant 0. */
export const curveOf = (readings: readonly TypedReading[], unit: TemperatureUnit): CurveReading[] =>
  readings.map(({ minutes, value }) => ({ at: Math.round(minutes * MINUTE), temperature: degrees(value, unit) }));

/** Each reading in words, as it was typed. */
export const factsOf = (readings: readonly TypedReading[], unit: TemperatureUnit): Fact[] =>
  readings.map(({ minutes, value }) => ({
    what: minutes === 0 ? 'At the start' : `After ${sayDuration(minutes * MINUTE)}`,
    said: sayDegrees(degrees(value, unit)),
  }));
