import { coded } from '../limits/coded';
import { degrees } from '../quantity/degrees';
import { degreesOf, timeOf } from '../quantity/quantities';
import type { TemperatureUnit } from '../quantity/temperature';
import type { CurveReading } from '../thermal/curve';
import type { Fact } from './calculation';

/** Minutes since the first reading. */
export type TypedReading = { minutes: number; value: number };

const MINUTE = 60_000;

/** Instant 0 is the start. */
export const curveOf = (readings: readonly TypedReading[], unit: TemperatureUnit): CurveReading[] =>
  readings.map(({ minutes, value }) => ({ at: Math.round(minutes * MINUTE), temperature: degrees(value, unit) }));

export const factsOf = (readings: readonly TypedReading[], unit: TemperatureUnit): Fact[] =>
  readings.map(({ minutes, value }) => ({ what: momentOf(minutes), is: degreesOf(degrees(value, unit)) }));

export const momentOf = (minutes: number): Fact['what'] =>
  minutes === 0 ? coded('at-the-start') : coded('after-time', { time: timeOf(minutes * MINUTE) });
