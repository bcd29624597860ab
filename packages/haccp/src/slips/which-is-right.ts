import type { Surroundings } from '../thermal/around-core';
import { onCommonScale } from '../quantity/convert-degrees';
import { formatDegrees } from '../quantity/degrees';
import { formatAbout } from '../quantity/duration';
import type { Degrees } from '../quantity/temperature';
import { isUsableReading, type CurveReading } from '../thermal/curve';
import type { Piece } from '../thermal/piece';
import { coldestAround } from './coldest-around';
import { speedBeside } from './speed-beside';

/** What a reading that is being entered stands beside. */
export type BesideReading = {
  /** Of the same probe; only what was read before the new one tells where it was going. */
  before: readonly CurveReading[];
  surroundings?: Surroundings;
  /** Whose core is read, where one is: it says how fast that core can move. */
  piece?: Piece;
  /** What the thermometer may be wrong by, on the common scale. */
  error: number;
  /** It lies in what is colder, and cannot get colder than that. */
  isChilling: boolean;
};

/** Why a person is asked which is right, and what they may have meant instead. The number is never changed for them. */
export type WhichIsRight = { because: string; meant: Degrees[] };

const celsius = (degrees: number): number => onCommonScale({ hundredths: degrees * 100, unit: '°C' });
const HOUR = 3_600_000;
/** A core moves as fast before its course is known, °C in an hour. Common practice, no source. */
const USUAL = { chilling: celsius(10), heating: celsius(30) };
/** Two readings closer together tell no course. Common practice, no source. */
const APART = 5 * 60_000;
/** On its course: half as much again as it was going, and two degrees. Common practice, no source. */
const ON = { times: 1.5, and: celsius(2) };
/** Off its course: twice as much, and five degrees. Common practice, no source. */
const OFF = { times: 2, and: celsius(5) };

/**
 * Asks about a temperature by the course of its curve, by what the piece lies in and by how fast its core can move, not
 * by a fixed range: 31 °F after 94.7 °F in air of 33.5 °F is colder than the air, and 31 °C lies on the curve. Undefined
 * when nothing is odd.
 */
export function whichIsRight(entered: CurveReading, known: BesideReading): WhichIsRight | undefined {
  if (!isUsableReading(entered)) return undefined;
  const { temperature } = entered;
  const course = courseTo(entered.at, known);
  const coldest = known.isChilling ? coldestAround(known.surroundings, known.error) : undefined;
  const other: Degrees = { ...temperature, unit: temperature.unit === '°C' ? '°F' : '°C' };
  if (coldest !== undefined && onCommonScale(temperature) < coldest) {
    const because = `${formatDegrees(temperature)} is colder than what it lies in.`;
    return { because, meant: canBe(other, coldest, course) ? [other] : [] };
  }
  if (!course) return undefined;
  const beside = `${formatDegrees(course.last.temperature)}, ${formatAbout(entered.at - course.last.at)} before`;
  if (isOff(temperature, course) && isOn(other, course)) {
    return { because: `${formatDegrees(temperature)} is far from ${beside}.`, meant: [other] };
  }
  const way = speedBeside(entered, known);
  const because = `${formatDegrees(temperature)} ${way} faster than the core of the piece can: ${beside}.`;
  const isOther = isNoBack(other, course, known) && !speedBeside({ ...entered, temperature: other }, known);
  return way && { because, meant: isOther ? [other] : [] };
}

/** "31 °F is colder than what it lies in. Did you mean 31 °C?" */
export const sayWhich = ({ because, meant: [other] }: WhichIsRight): string =>
  `${because} ${other ? `Did you mean ${formatDegrees(other)}?` : 'Is it really so?'}`;

/** What chills only falls: a rise is none of its courses, however the readings began. */
const FALLS = -1;

/** Where a probe was, how far it goes until an instant at its own pace, and at least how far one may. */
type Course = { last: CurveReading; was: number; goes: number; may: number; way: number };

function courseTo(at: number, { before, isChilling }: BesideReading): Course | undefined {
  const earlier = before.filter((one) => isUsableReading(one) && one.at <= at).sort((a, b) => a.at - b.at);
  const last = earlier[earlier.length - 1];
  if (!last) return undefined;
  const was = onCommonScale(last.temperature);
  const usual = (USUAL[isChilling ? 'chilling' : 'heating'] * (at - last.at)) / HOUR;
  const one = earlier.findLast((reading) => last.at - reading.at >= APART);
  if (!one) return { last, was, goes: usual, may: usual, way: isChilling ? FALLS : 0 };
  const moved = was - onCommonScale(one.temperature);
  const goes = (Math.abs(moved) * (at - last.at)) / (last.at - one.at);
  return { last, was, goes, may: Math.max(goes, usual), way: isChilling ? FALLS : Math.sign(moved) };
}

const isOff = (temperature: Degrees, { was, may }: Course): boolean =>
  Math.abs(onCommonScale(temperature) - was) > OFF.times * may + OFF.and;

/** The way it was going, or hardly back. */
function isOn(temperature: Degrees, { was, goes, way }: Course): boolean {
  const moved = onCommonScale(temperature) - was;
  const isBack = moved * way < 0;
  return Math.abs(moved) <= (isBack ? 0 : ON.times * goes) + ON.and;
}

/** On from where it was, or hardly back: what chills does not rise, and what cooks does not fall. */
function isNoBack(temperature: Degrees, { was }: Course, { isChilling }: BesideReading): boolean {
  const moved = onCommonScale(temperature) - was;
  return isChilling ? moved <= ON.and : moved >= -ON.and;
}

/** Between what it lies in and where it was. */
function canBe(temperature: Degrees, coldest: number, course: Course | undefined): boolean {
  const value = onCommonScale(temperature);
  return value >= coldest && (course === undefined || value <= course.was + ON.and);
}
