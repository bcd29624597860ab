import { expect, test } from 'vitest';
import { coolingUncured } from '../../limit-sets/fsis-stabilization';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import { beginCooling } from './cooling-so-far';
import type { CurveReading } from '../../thermal/curve';
import { rescuesOf } from './rescue';
import type { CoolingContext } from './stage-span';
import { judgeCooling } from './judge-cooling';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const notes = (readings: CurveReading[], context: Partial<CoolingContext> = {}) =>
  judgeCooling(readings, coolingUncured, { ended: false, ...context }).notes;

test('a running stage is told how fast it must go on', () => {
  expect(notes(curve('°F', [0, 130], [40, 105]), { now: 65 * MINUTE })).toEqual([
    '130 → 80 °F can still be met: 80 °F within 25 min, 60 °F an hour on average.',
  ]);
  expect(notes(curve('°C', [0, 54.4], [40, 41.7]))).toEqual([
    '54.4 → 26.7 °C can still be met: 26.7 °C within 50 min, 18 °C an hour on average.',
  ]);
});

test('in a chiller of known temperature it is told what to see half way', () => {
  // 34 + √(71 × 46) = 91.148 °F after half of the 50 min that are left.
  expect(notes(curve('°F', [0, 130], [40, 105]), { chiller: degrees(34, '°F') })).toEqual([
    '130 → 80 °F can still be met: 80 °F within 50 min, 30 °F an hour on average, at most 91.1 °F after 25 min.',
  ]);
  // 1 + √(40.7 × 25.7) = 33.342 °C.
  expect(notes(curve('°C', [0, 54.4], [40, 41.7]), { chiller: degrees(1, '°C') })).toEqual([
    '54.4 → 26.7 °C can still be met: 26.7 °C within 50 min, 18 °C an hour on average, at most 33.3 °C after 25 min.',
  ]);
});

test('a chiller as warm as the bound never gets there', () => {
  expect(notes(curve('°F', [0, 130], [80, 80], [200, 55]), { chiller: degrees(40, '°F') })).toEqual([
    '80 → 40 °F cannot be met in this chiller: it is no colder than 40 °F. Use a colder one.',
  ]);
});

test('time that is over is not got back, seen by a reading or by the clock', () => {
  const over = '130 → 80 °F can no longer be met by chilling: its time is over. Only readings taken in time could show it.';
  expect(notes(curve('°F', [0, 130], [95, 90]))).toEqual([over]);
  expect(notes(curve('°F', [0, 130], [80, 90]), { now: 90 * MINUTE })).toEqual([over]);
});

test('a chill that is ended, not begun or through has nothing to rescue', () => {
  expect(notes(curve('°F', [0, 130], [40, 105]), { ended: true })).toEqual([]);
  expect(notes(curve('°F', [0, 150]))).toEqual([]);
  expect(notes(curve('°F', [0, 130], [80, 80], [300, 40]))).toEqual([]);
});

test('what the thermometer may be wrong by has to be chilled away too', () => {
  const readings = curve('°F', [0, 134], [40, 105]);
  const said = judgeCooling(readings, coolingUncured, { ended: false, instrumentError: degrees(2, '°F') }).notes;
  expect(said.at(-1)).toBe('130 → 80 °F can still be met: 80 °F within 50 min, 32.4 °F an hour on average.');
});

test('of a chill without readings there is nothing to say', () => {
  expect(rescuesOf(beginCooling(coolingUncured, {}), [], { ended: false })).toEqual([]);
});
