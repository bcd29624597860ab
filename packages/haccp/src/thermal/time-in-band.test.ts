import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boundOf } from '../quantity/bound';
import { prepareCurve, type CurveReading } from './curve';
import { timeInBand } from './time-in-band';

const low = boundOf({ '°F': 5000, '°C': 1000 });
const high = boundOf({ '°F': 13000, '°C': 5440 });
const curve = (...points: [at: number, fahrenheit: number][]): CurveReading[] =>
  points.map(([at, value]) => ({ at, temperature: { hundredths: value * 100, unit: '°F' } }));
const measure = (readings: CurveReading[]) => timeInBand(prepareCurve(readings), low, high, 600, readings.length - 1);

test.each([
  ['wholly inside', curve([0, 60], [60, 100]), 60, 60],
  ['from bound to bound', curve([0, 50], [80, 130]), 80, 80],
  ['in from below', curve([0, 40], [60, 60]), 60, 30],
  ['through the whole band', curve([0, 40], [100, 140]), 100, 80],
  ['below it', curve([0, 40], [60, 50]), 0, 0],
  ['above it', curve([0, 130], [60, 140]), 0, 0],
  ['along its upper bound', curve([0, 130], [60, 130]), 0, 0],
  ['along its lower bound', curve([0, 50], [60, 50]), 0, 0],
])('a curve %s', (_case, readings, longest, straight) => {
  const time = measure(readings);
  expect(time.longest).toBe(longest);
  expect(time.straight).toBeCloseTo(straight, 9);
});

test('a segment longer than tolerated is named and left out of what is sure', () => {
  expect(measure(curve([0, 50], [500, 90], [1101, 130]))).toEqual({
    longest: 1101,
    straight: 1101,
    straightOutsideGaps: 500,
    gap: 601,
  });
});

test('the longest is never shorter than the straight line, in whatever units the readings are', () => {
  const step = fc.tuple(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 0, max: 16_000 }), fc.boolean());
  fc.assert(
    fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
      let at = 0;
      const readings = steps.map(([gap, hundredths, isCelsius]): CurveReading => {
        at += gap;
        return isCelsius
          ? { at, temperature: { hundredths: Math.round(((hundredths - 3200) * 5) / 9), unit: '°C' } }
          : { at, temperature: { hundredths, unit: '°F' } };
      });
      const { longest, straight, straightOutsideGaps } = measure(readings);
      expect(longest).toBeGreaterThanOrEqual(straight - 1e-6);
      expect(straight).toBeGreaterThanOrEqual(straightOutsideGaps);
      expect(straightOutsideGaps).toBeGreaterThanOrEqual(0);
    }),
  );
});
