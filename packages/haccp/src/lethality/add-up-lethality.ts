import { onCommonScale } from '../quantity/convert-degrees';
import { prepareCurve, type CurveReading } from '../thermal/curve';
import { DEGREE } from './celsius';
import { killAbove, killLaw, type KillLaw } from './kill-rate';
import { FLOOR_CELSIUS, type Lethality } from './lethality';
import type { LethalitySet } from './lethality-set';

export type LethalityOptions = {
  /** Default 54.4 °C: nothing colder counts. */
  floorCelsius?: number;
  /** Milliseconds. Default 15 min, common practice, no source. */
  longestGap?: number;
};

const LONGEST_GAP = 15 * 60_000;

/** Constant in size, however many readings. */
export type LethalitySum = {
  readonly set: LethalitySet;
  readonly law: KillLaw;
  readonly floor: number;
  readonly longestGap: number;
  byStraightLines: number;
  atLeast: number;
  readings: number;
  from: number;
  lastAt: number;
  lastValue: number;
};

export const beginLethality = (
  set: LethalitySet,
  { floorCelsius = FLOOR_CELSIUS, longestGap = LONGEST_GAP }: LethalityOptions = {},
): LethalitySum => ({
  set,
  law: killLaw(set),
  floor: (Number.isNaN(floorCelsius) ? FLOOR_CELSIUS : floorCelsius) * DEGREE,
  longestGap,
  byStraightLines: 0,
  atLeast: 0,
  readings: 0,
  from: NaN,
  lastAt: NaN,
  lastValue: NaN,
});

/** Before the first and after the last reading nothing is credited. */
export function addToLethality(sum: LethalitySum, at: number, value: number): void {
  if (sum.readings === 0) sum.from = at;
  else {
    const span = at - sum.lastAt;
    const kill = killAbove(sum.law, sum.floor, sum.lastValue, value, span);
    sum.byStraightLines += kill;
    const colder = Math.min(sum.lastValue, value);
    sum.atLeast += span <= sum.longestGap ? kill : killAbove(sum.law, sum.floor, colder, colder, span);
  }
  sum.readings += 1;
  sum.lastAt = at;
  sum.lastValue = value;
}

export const lethalityOf = ({ set, floor, byStraightLines, atLeast, ...sum }: LethalitySum): Lethality => ({
  set,
  floorCelsius: floor / DEGREE,
  byStraightLines,
  atLeast,
  restsOn: sum.readings === 0 ? { readings: 0 } : { readings: sum.readings, from: sum.from, to: sum.lastAt },
});

/**
 * log10 of heating, hold, carry-over and the start of cooling, by straight lines, for one probe; the colder of two
 * values of an instant. Impossible readings leave a gap. Good to 1e-9 of itself for the readings given; biology is good
 * to a factor of two to three.
 */
export function addUpLethality(readings: readonly CurveReading[], set: LethalitySet, options: LethalityOptions = {}): Lethality {
  const sum = beginLethality(set, options);
  for (const { at, temperature } of prepareCurve(readings).colder) addToLethality(sum, at, onCommonScale(temperature));
  return lethalityOf(sum);
}
