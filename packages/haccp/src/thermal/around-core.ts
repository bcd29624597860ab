import { onCommonScale } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import type { Around } from './core-speed';
import { borneOut } from './borne-out';
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

/** So far beyond its set point it is another medium, or misread. Common practice, no source. */
const STRAYS = celsius(15);

/**
 * How hot and how cold the surface of a piece can be. A set point of the plan narrows it. What was read of the
 * surroundings can only widen it, since between two readings nobody looked; and only where another reading or the set
 * point bears it out, and not far beyond that set point, so that no slip makes an impossible core possible.
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

/** A chiller is no oven, whatever was read of it. */
function hottestOf(set: number | undefined, read: number, error: number): number {
  const surface = (one: number) => (one > HOTTEST_RETORT ? BOILING : one + SWING + error);
  if (set === undefined) return Math.max(BOILING, surface(read));
  return set < HEATS ? BOILING : Math.max(surface(set), surface(Math.min(read, set + STRAYS)));
}

/** An oven is no freezer. */
function coldestOf(set: number | undefined, read: number, error: number): number {
  const surface = (one: number) => one - SWING - error;
  if (set === undefined) return Math.min(ICE_COLD, surface(read));
  return set >= HEATS ? ICE_COLD : Math.min(surface(set), surface(Math.max(read, set - STRAYS)));
}
