import { expect, test } from 'vitest';
import { onCommonScale } from '../quantity/convert-degrees';
import { degrees } from '../quantity/degrees';
import { aroundCore, type Surroundings } from './around-core';
import { beginSpeed, copyOfSpeed, rateOf, takeForCore, tooFast } from './core-speed';
import { instantWith } from './instant';
import { unknownPiece, usualPiece } from './piece';

const celsius = (value: number): number => onCommonScale(degrees(value, '°C'));
const readings = (...values: number[]) => values.map((value, at) => ({ at, temperature: degrees(value, '°C') }));
const named = (setPoint: number | undefined, ...read: number[]): Surroundings => ({
  setPoint: setPoint === undefined ? undefined : degrees(setPoint, '°C'),
  readings: readings(...read),
});

test.each<[string, Surroundings | undefined, coldest: number, hottest: number]>([
  ['nobody has named', undefined, -3, 100],
  ['named and never read', named(undefined), -3, 100],
  ['set to 1 °C', named(1), -3, 100],
  ['set to 4 °C', named(4), 0, 100],
  ['a blast chiller set to −20 °C', named(-20), -24, 100],
  ['read at −18 °C once', named(undefined, -18), -3, 100],
  ['read at −18 °C, which nothing else bears out', named(undefined, -18, 2), -3, 100],
  ['read at −18 °C and near it', named(undefined, -18, -17, 2), -22, 100],
  ['set to 4 °C and read at 1 °C', named(4, 1), -3, 100],
  ['set to 4 °C and read at −1 °C once', named(4, -1), 0, 100],
  ['set to 4 °C and read at −1 °C and near it', named(4, -1, 0), -5, 100],
  ['set to 2 °C and read at −40 °C again and again', named(2, -40, -40, -40), -17, 100],
  ['set to 2 °C and read at 126 °C again and again', named(2, 126, 126), -2, 100],
  ['a smokehouse set to 74 °C', named(74), -3, 78],
  ['set to 74 °C and read at 82 °C once', named(74, 60, 82), -3, 78],
  ['set to 74 °C and read at 82 °C and near it', named(74, 60, 80, 82), -3, 86],
  ['set to 74 °C and read at 126 °C again and again', named(74, 126, 126), -3, 93],
  ['set to 74 °C and read at −40 °C again and again', named(74, -40, -40), -3, 78],
  ['a retort read at 121 °C, and read again', named(undefined, 121, 120), -3, 125],
  ['read at 60 °C alone, which may not be its hottest', named(undefined, 60), -3, 100],
  ['a retort at 121 °C', named(121), -3, 125],
  ['an oven at 180 °C, in which a wet surface boils', named(180), -3, 100],
])('surroundings %s', (_case, surroundings, coldest, hottest) => {
  expect(aroundCore(surroundings, 0)).toEqual({ coldest: celsius(coldest), hottest: celsius(hottest), error: celsius(0.5) });
});

test('the error of the thermometer widens the surroundings, and what each reading may be off by', () => {
  expect(aroundCore(named(4), celsius(2))).toEqual({ coldest: celsius(-2), hottest: celsius(100), error: celsius(2) });
});

const begin = () => beginSpeed(rateOf(unknownPiece) as number, aroundCore(undefined, 0));
const at = (minutes: number, value: number) => instantWith({ at: minutes * 60_000, temperature: degrees(value, '°C') });

test('exactly at the bound is not too fast, a hundredth of a degree beyond it is', () => {
  for (const [from, isRise] of [
    [20, true],
    [80, false],
  ] as const) {
    const speed = begin();
    takeForCore(speed, at(0, from));
    const edge = copyOfSpeed(speed);
    expect(tooFast(edge, at(1, from))).toBeUndefined();
    // From 20 °C at most to 50.06 °C in a minute: 100 − (80 − 0.5) e^(−rate × 60 s) + 0.5; down alike, to −3 °C.
    const left = Math.exp(-(rateOf(unknownPiece) as number) * 60_000);
    const furthest = isRise ? 100.5 - (100 - from - 0.5) * left : -3.5 + (from + 3 - 0.5) * left;
    const inside = isRise ? Math.floor(furthest * 100) / 100 : Math.ceil(furthest * 100) / 100;
    const beyond = isRise ? inside + 0.01 : inside - 0.01;
    expect(tooFast(copyOfSpeed(speed), at(1, Number(inside.toFixed(2))))).toBeUndefined();
    expect(tooFast(copyOfSpeed(speed), at(1, Number(beyond.toFixed(2))))).toBe(
      isRise ? 'rises faster than the piece can' : 'falls faster than the piece can',
    );
  }
});

test('a core that freezes on is held to nothing below, and rises from freezing as if it had thawed', () => {
  const speed = begin();
  for (const [minute, value] of [
    [0, 5],
    [10, 0],
    [11, -18],
    [12, -30],
  ] as const) {
    expect(tooFast(speed, at(minute, value))).toBeUndefined();
    takeForCore(speed, at(minute, value));
  }
  expect(tooFast(speed, at(13, 60))).toBe('rises faster than the piece can');
});

test('a core hotter than what it lies in may stay so, and not rise', () => {
  const speed = beginSpeed(rateOf(unknownPiece) as number, aroundCore(named(60), 0));
  takeForCore(speed, at(0, 80));
  expect(tooFast(speed, at(10, 80))).toBeUndefined();
  expect(tooFast(speed, at(20, 82))).toBe('rises faster than the piece can');
});

test('of one instant with two values the colder must rise to what follows, and the warmer fall to it', () => {
  const speed = begin();
  takeForCore(speed, { ...at(0, 50), warm: celsius(75) });
  expect(tooFast(speed, at(1, 75))).toBe('rises faster than the piece can');
  expect(tooFast(speed, at(1, 30))).toBe('falls faster than the piece can');
});

test('every class has a piece, the thinnest usual one', () => {
  expect(usualPiece(undefined)).toBe(unknownPiece);
  expect(usualPiece('dry sausage')).toBe(unknownPiece);
  expect(usualPiece('roast beef')).toEqual({ shape: 'cylinder', smallest: { value: 60, unit: 'mm' } });
});
