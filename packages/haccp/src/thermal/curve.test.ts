import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import type { Degrees } from '../quantity/temperature';
import { byProbe, isPossible, isUsableReading, prepareCurve, type CurveReading } from './curve';

const reading = (at: number, fahrenheit: number, probe?: string): CurveReading => ({
  at,
  temperature: degrees(fahrenheit, '°F'),
  probe,
});

test('a sound curve is used as it is, without a copy', () => {
  const readings = [reading(0, 140), reading(1, 139)];
  const curve = prepareCurve(readings);
  expect(curve.colder).toBe(readings);
  expect(curve.warmer).toBe(readings);
  expect(curve.notes).toEqual([]);
});

test('of one instant with two values the colder and the warmer are both kept', () => {
  const [warm, cold] = [reading(5, 140), reading(5, 120)];
  const curve = prepareCurve([reading(0, 150), warm, cold, warm, reading(9, 100)]);
  expect(curve.colder[1]).toBe(cold);
  expect(curve.warmer[1]).toBe(warm);
  expect(curve.colder).toHaveLength(3);
});

test('readings given are never changed', () => {
  const readings = [reading(2, 140), reading(1, 150), reading(1, 151)];
  const before = JSON.stringify(readings);
  prepareCurve(readings);
  expect(JSON.stringify(readings)).toBe(before);
});

test.each([
  ['a freezer', degrees(-40, '°C'), true],
  ['colder than any freezer', degrees(-40.01, '°C'), false],
  ['a hot oven', degrees(300, '°C'), true],
  ['an open circuit', degrees(300.01, '°C'), false],
  ['colder than any freezer in °F', degrees(-40.01, '°F'), false],
  ['a hot oven in °F', degrees(572, '°F'), true],
  ['nothing', undefined, false],
])('%s', (_case, temperature, isTaken) => {
  expect(isPossible(temperature)).toBe(isTaken);
});

test('readings are told apart by probe, in any order', () => {
  const probes = byProbe([reading(0, 140), reading(0, 141, 'B'), reading(1, 139), reading(1, 140, 'A')]);
  expect([...probes].map(([probe, own]) => [probe, own.length])).toEqual([
    ['', 2],
    ['B', 1],
    ['A', 1],
  ]);
});

test('a scale that is neither °C nor °F measures nothing', () => {
  expect(isPossible({ hundredths: 34_415, unit: 'K' } as unknown as Degrees)).toBe(false);
});

test.each([
  ['the last instant a calendar holds', 8.64e15, true],
  ['a millisecond later', 8.64e15 + 1, false],
  ['an instant before all calendars', -1e303, false],
  ['no instant', NaN, false],
])('a reading at %s', (_case, at, isUsable) => {
  expect(isUsableReading(reading(at, 140))).toBe(isUsable);
});
