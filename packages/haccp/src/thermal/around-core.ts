import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import type { Around } from './core-speed';
import { isUsableReading } from './curve';
import type { CurveReading } from './instant';

/** What the product lies in: its set point as the plan says it, and what was read of it. */
export type Surroundings = { setPoint?: Degrees; readings: readonly CurveReading[] };

const celsius = (degrees: number): number => onCommonScale({ hundredths: degrees * 100, unit: '°C' });

/** A wet surface gets no hotter than boiling water. */
const BOILING = celsius(100);
/** A dry oven is hotter than any retort, and what lies in it is wet: it is boiling water to the piece. */
const HOTTEST_RETORT = celsius(130);
/** Ice water and the air of a chiller, at their coldest; a colder surface freezes. Common practice, no source. */
const ICE_COLD = celsius(-3);
/** Above it the surroundings heat, below it they chill. */
const HEATS = celsius(40);
/** So far from its set point, or from what was read, the medium may swing. Common practice, no source. */
const SWING = celsius(4);
/** What a reading may be off by where the plan states no more: half a degree of °C. Common practice, no source. */
const LEAST_ERROR = celsius(0.5);

/**
 * How hot and how cold the surface of a piece can be. A set point of the plan narrows it; what was read of the
 * surroundings can only widen it, since between two readings nobody looked.
 */
export function aroundCore(surroundings: Surroundings | undefined, error: number): Around {
  const { setPoint, readings = [] } = surroundings ?? {};
  const set = setPoint ? [onCommonScale(setPoint)] : [];
  const read = readings.filter(isUsableReading).map(({ temperature }) => onCommonScale(temperature));
  const named = [...set, ...read];
  const hot = named.filter((one) => one >= HEATS).map((one) => (one > HOTTEST_RETORT ? BOILING : one + SWING + error));
  const cold = named.filter((one) => one < HEATS).map((one) => one - SWING - error);
  return {
    hottest: set.some((one) => one >= HEATS) ? largest(hot) : Math.max(BOILING, largest(hot)),
    coldest: set.some((one) => one < HEATS) ? least(cold) : Math.min(ICE_COLD, least(cold)),
    error: Math.max(error, LEAST_ERROR),
  };
}

/** Of more than a function takes arguments. */
const largest = (values: readonly number[]): number => values.reduce((most, one) => Math.max(most, one), -Infinity);
const least = (values: readonly number[]): number => values.reduce((most, one) => Math.min(most, one), Infinity);
