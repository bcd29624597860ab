import { expect, test } from 'vitest';
import { coolingUncured } from '../../limit-sets/fsis-stabilization';
import { degrees } from '../../quantity/degrees';
import type { TemperatureUnit } from '../../quantity/temperature';
import { beginCooling } from './cooling-so-far';
import type { CurveReading } from '../../thermal/curve';
import { rescuesOf } from './rescue';
import type { CoolingContext } from './stage-span';
import { judgeCurve } from '../../limits/judge-curve';

const MINUTE = 60_000;
const curve = (unit: TemperatureUnit, ...points: [minutes: number, value: number][]): CurveReading[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, temperature: degrees(value, unit) }));
const notes = (readings: CurveReading[], context: Partial<CoolingContext> = {}) =>
  judgeCurve(readings, coolingUncured, { ended: false, ...context }).notes;

test('a running stage is told how fast it must go on', () => {
  expect(notes(curve('°F', [0, 130], [40, 105]), { now: 65 * MINUTE })).toEqual([
    {
      code: 'rescue',
      figures: {
        stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
        to: { value: '80', unit: '°F' },
        left: { value: '1500000', unit: 'ms' },
        rate: { value: '60', unit: '°F' },
      },
    },
  ]);
  expect(notes(curve('°C', [0, 54.4], [40, 41.7]))).toEqual([
    {
      code: 'rescue',
      figures: {
        stage: { from: { value: '54.4', unit: '°C' }, to: { value: '26.7', unit: '°C' } },
        to: { value: '26.7', unit: '°C' },
        left: { value: '3000000', unit: 'ms' },
        rate: { value: '18', unit: '°C' },
      },
    },
  ]);
});

test('in a chiller of known temperature it is told what to see half way', () => {
  // 34 + √(71 × 46) = 91.148 °F after half of the 50 min that are left.
  expect(notes(curve('°F', [0, 130], [40, 105]), { chiller: degrees(34, '°F') })).toEqual([
    {
      code: 'rescue-by-half-way',
      figures: {
        stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } },
        to: { value: '80', unit: '°F' },
        left: { value: '3000000', unit: 'ms' },
        rate: { value: '30', unit: '°F' },
        most: { value: '91.1', unit: '°F' },
        half: { value: '1500000', unit: 'ms' },
      },
    },
  ]);
  // 1 + √(40.7 × 25.7) = 33.342 °C.
  expect(notes(curve('°C', [0, 54.4], [40, 41.7]), { chiller: degrees(1, '°C') })).toEqual([
    {
      code: 'rescue-by-half-way',
      figures: {
        stage: { from: { value: '54.4', unit: '°C' }, to: { value: '26.7', unit: '°C' } },
        to: { value: '26.7', unit: '°C' },
        left: { value: '3000000', unit: 'ms' },
        rate: { value: '18', unit: '°C' },
        most: { value: '33.3', unit: '°C' },
        half: { value: '1500000', unit: 'ms' },
      },
    },
  ]);
});

test('a chiller as warm as the bound never gets there', () => {
  expect(notes(curve('°F', [0, 130], [80, 80], [200, 55]), { chiller: degrees(40, '°F') })).toEqual([
    { code: 'rescue-chiller-too-warm', figures: expect.objectContaining({ to: { value: '40', unit: '°F' } }) as unknown },
  ]);
});

test('time that is over is not got back, seen by a reading or by the clock', () => {
  expect(notes(curve('°F', [0, 130], [95, 90]))).toEqual([
    {
      code: 'rescue-too-late',
      figures: { stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, to: { value: '80', unit: '°F' } },
    },
  ]);
  expect(notes(curve('°F', [0, 130], [80, 90]), { now: 90 * MINUTE })).toEqual([
    {
      code: 'rescue-too-late',
      figures: { stage: { from: { value: '130', unit: '°F' }, to: { value: '80', unit: '°F' } }, to: { value: '80', unit: '°F' } },
    },
  ]);
});

test('a chill that is ended, not begun or through has nothing to rescue', () => {
  expect(notes(curve('°F', [0, 130], [40, 105]), { ended: true })).toEqual([]);
  expect(notes(curve('°F', [0, 150]))).toEqual([]);
  expect(notes(curve('°F', [0, 130], [80, 80], [300, 40]))).toEqual([]);
});

test('what the thermometer may be wrong by has to be chilled away too', () => {
  const readings = curve('°F', [0, 134], [40, 105]);
  const said = judgeCurve(readings, coolingUncured, { ended: false, instrumentError: degrees(2, '°F') }).notes;
  expect(said.at(-1)).toMatchObject({
    code: 'rescue',
    figures: { rate: { value: '32.4', unit: '°F' }, left: { value: '3000000', unit: 'ms' } },
  });
});

test('of a chill without readings there is nothing to say', () => {
  expect(rescuesOf(beginCooling(coolingUncured, { error: 0 }), [], { ended: false })).toEqual([]);
});
