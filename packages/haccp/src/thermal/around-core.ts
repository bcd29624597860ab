import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import type { Around } from './core-speed';
import { borneOut } from './borne-out';
import type { CurveReading } from './instant';

/** The medium that the product lies in. */
export type Surroundings = { setPoint?: Degrees; readings: readonly CurveReading[] };

const celsius = (degrees: number): number => onCommonScale({ hundredths: degrees * 100, unit: '°C' });

/** A wet surface gets no hotter than boiling water. */
const BOILING = celsius(100);
/** A dry oven is hotter than any retort, but what lies in it is wet and meets boiling water. */
const HOTTEST_RETORT = celsius(130);
/** Ice water and the coldest air of a chiller; a colder surface freezes. Common practice, no source. */
const ICE_COLD = celsius(-3);
/** Above it the surroundings heat, below it they chill. */
const HEATS = celsius(40);
/** The medium may swing so far from its set point or a reading. Common practice, no source. */
const SWING = celsius(4);
/** Half a degree °C where the plan states no error. Common practice, no source. */
const LEAST_ERROR = celsius(0.5);

/** Farther from its set point it is another medium, or misread. Common practice, no source. */
const STRAYS = celsius(15);

/**
 * A set point narrows the surface temperatures. Readings of the surroundings only widen them, since nobody looks
 * between two readings; another reading or the set point must confirm them, so that no slip makes an impossible core
 * possible.
 */
export function aroundCore(surroundings: Surroundings | undefined, error: number): Around {
  const known = surroundings ?? { readings: [] };
  const set = known.setPoint && onCommonScale(known.setPoint);
  return {
    hottest: hottestOf(set, borneOut(known, 'hottest') ?? -Infinity, error),
    coldest: coldestOf(set, borneOut(known, 'coldest') ?? Infinity, error),
    error: Math.max(error, LEAST_ERROR),
  };
}

/** A chiller never counts as an oven, whatever was read of it. */
function hottestOf(set: number | undefined, read: number, error: number): number {
  const surface = (one: number) => (one > HOTTEST_RETORT ? BOILING : one + SWING + error);
  if (set === undefined) return Math.max(BOILING, surface(read));
  return set < HEATS ? BOILING : Math.max(surface(set), surface(Math.min(read, set + STRAYS)));
}

/** An oven never counts as a freezer. */
function coldestOf(set: number | undefined, read: number, error: number): number {
  const surface = (one: number) => one - SWING - error;
  if (set === undefined) return Math.min(ICE_COLD, surface(read));
  return set >= HEATS ? ICE_COLD : Math.min(surface(set), surface(Math.max(read, set - STRAYS)));
}
