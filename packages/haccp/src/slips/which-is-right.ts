import type { Surroundings } from '../thermal/around-core';
import { onCommonScale } from '../quantity/convert-degrees';
import type { CodedAs } from '../limits/coded';
import { degreesOf, timeOf } from '../quantity/quantities';
import type { Quantity } from '../quantity/quantity';
import type { Degrees } from '../quantity/temperature';
import { isUsableReading, type CurveReading } from '../thermal/curve';
import type { Piece } from '../thermal/piece';
import { coldestAround } from './coldest-around';
import { speedBeside } from './speed-beside';

export type BesideReading = {
  /** Of the same probe; readings after the new one are not used. */
  before: readonly CurveReading[];
  surroundings?: Surroundings;
  piece?: Piece;
  /** Error of the thermometer, on the common scale. */
  error: number;
  /** The medium is colder. */
  isChilling: boolean;
};

/** The number is never changed for the person. */
export type WhichIsRight = { because: CodedAs<OddReadingCode>; meant: Degrees[] };
export type OddReadingCode = 'colder-than-around' | 'far-from-course' | 'falls-too-fast' | 'rises-too-fast';

const celsius = (degrees: number): number => onCommonScale({ hundredths: degrees * 100, unit: '°C' });
const MINUTE = 60_000;
const HOUR = 3_600_000;
/** Speed before the course is known, °C in an hour. Common practice, no source. */
const USUAL = { chilling: celsius(10), heating: celsius(30) };
/** Closer readings tell no course. Common practice, no source. */
const APART = 5 * 60_000;
/** On course: up to half as much again, and two degrees. Common practice, no source. */
const ON = { times: 1.5, and: celsius(2) };
/** Off course: twice as much, and five degrees. Common practice, no source. */
const OFF = { times: 2, and: celsius(5) };

/**
 * By the course of the curve, the medium and the speed of the core, not by a fixed range: 31 °F after 94.7 °F in air of
 * 33.5 °F is colder than the air, and 31 °C lies on the curve.
 */
export function whichIsRight(entered: CurveReading, known: BesideReading): WhichIsRight | undefined {
  if (!isUsableReading(entered)) return undefined;
  const { temperature } = entered;
  const course = courseTo(entered.at, known);
  const coldest = known.isChilling ? coldestAround(known.surroundings, known.error) : undefined;
  const other: Degrees = { ...temperature, unit: temperature.unit === '°C' ? '°F' : '°C' };
  if (coldest !== undefined && onCommonScale(temperature) < coldest) {
    const because = { code: 'colder-than-around', figures: { read: degreesOf(temperature) } } as const;
    return { because, meant: canBe(other, coldest, course) ? [other] : [] };
  }
  if (!course) return undefined;
  const figures = { read: degreesOf(temperature), last: degreesOf(course.last.temperature), ago: toTheMinute(entered.at - course.last.at) };
  if (isOff(temperature, course) && isOn(other, course)) {
    return { because: { code: 'far-from-course', figures }, meant: [other] };
  }
  const way = speedBeside(entered, known);
  const isOther = isNoBack(other, course, known) && !speedBeside({ ...entered, temperature: other }, known);
  return way && { because: { code: `${way}-too-fast`, figures }, meant: isOther ? [other] : [] };
}

/** How long before, to the minute and at least one. */
const toTheMinute = (milliseconds: number): Quantity => timeOf(Math.max(1, Math.round(milliseconds / MINUTE)) * MINUTE);

/** A chilling core only falls, however the readings began. */
const FALLS = -1;

/** `goes`: at its own pace until the instant; `may`: at least so far. */
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

/** A chilling core does not rise, a cooking core does not fall. */
function isNoBack(temperature: Degrees, { was }: Course, { isChilling }: BesideReading): boolean {
  const moved = onCommonScale(temperature) - was;
  return isChilling ? moved <= ON.and : moved >= -ON.and;
}

function canBe(temperature: Degrees, coldest: number, course: Course | undefined): boolean {
  const value = onCommonScale(temperature);
  return value >= coldest && (course === undefined || value <= course.was + ON.and);
}
