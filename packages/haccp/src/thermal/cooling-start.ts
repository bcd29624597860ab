import { above, type Bound } from '../quantity/bound';
import { crossing } from './crossing';
import type { Curve, CurveReading } from './curve';

/** The instant a cooling stage is counted from. */
export type CoolingStart = {
  /** The earliest the readings allow (epoch ms). */
  at: number;
  /** By a straight line between the readings. */
  straightAt: number;
  /** The first reading below the bound: the stage is surely running from here. */
  firstBelow: number;
  /**
   * False when the first reading was already below the bound and nobody said when cooking ended: the true start is
   * earlier.
   */
  isKnown: boolean;
};

/**
 * The worst case: the last reading at or above the bound before the core fell below it.
 * `first` fall for the first stage; `last` fall for a later one, since the time before it is charged to the stage
 * before.
 * Undefined while no reading is below the bound.
 * @param cookingEnded readings before it belong to heating; counted from here when the first reading is already below
 */
export function findCoolingStart(
  { colder }: Curve,
  from: Bound,
  fall: 'first' | 'last',
  cookingEnded: number | undefined,
): CoolingStart | undefined {
  const isHot = (reading: CurveReading | undefined) => reading !== undefined && above(reading.temperature, from) >= 0;
  const begin = cookingEnded === undefined ? 0 : lastHotBefore(colder, isHot, cookingEnded);
  const hot = colder.findIndex((reading, index) => index >= begin && isHot(reading));
  if (hot === -1) return startOfAlreadyCold(colder, cookingEnded);

  const firstBelow =
    fall === 'first'
      ? colder.findIndex((reading, index) => index > hot && !isHot(reading))
      : 1 + colder.findLastIndex((reading) => isHot(reading));
  const below = colder[firstBelow];
  const before = colder[firstBelow - 1];
  if (!below || !before) return undefined;

  const earliest = cookingEnded !== undefined && below.at >= cookingEnded ? cookingEnded : -Infinity;
  return {
    at: Math.max(before.at, earliest),
    straightAt: Math.max(crossing(before, below, from), earliest),
    firstBelow,
    isKnown: true,
  };
}

function lastHotBefore(
  readings: readonly CurveReading[],
  isHot: (reading: CurveReading) => boolean,
  instant: number,
): number {
  return Math.max(
    0,
    readings.findLastIndex((reading) => reading.at <= instant && isHot(reading)),
  );
}

function startOfAlreadyCold(
  readings: readonly CurveReading[],
  cookingEnded: number | undefined,
): CoolingStart | undefined {
  const firstBelow = readings.findIndex(({ at }) => cookingEnded === undefined || at >= cookingEnded);
  const first = readings[firstBelow];
  if (!first) return undefined;
  const at = cookingEnded ?? first.at;
  return { at, straightAt: at, firstBelow, isKnown: cookingEnded !== undefined };
}
