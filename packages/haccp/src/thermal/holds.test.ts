import fc from 'fast-check';
import { expect, test } from 'vitest';
import { above, boundOf, type Bound } from '../quantity/bound';
import type { CurveReading } from './curve';
import { measureHolds } from './measure-holds.test-data';

const bounds = [14000, 14500, 15000, 15800].map((fahrenheit) => boundOf({ '°F': fahrenheit }));
const reading = (at: number, hundredths: number): CurveReading => ({ at, temperature: { hundredths, unit: '°F' } });

test('a hold that goes on is told from one that ended', () => {
  const readings = [reading(0, 15000), reading(60, 15100), reading(90, 14600), reading(200, 14700)];
  expect(measureHolds(readings, bounds, 1000)).toEqual({
    longest: [200, 200, 60, -1],
    since: [0, 0, undefined, undefined],
  });
});

test('one pass for all bounds gives what one bound after the other gives', () => {
  const step = fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 13_800, max: 16_000 }));
  fc.assert(
    fc.property(fc.array(step, { maxLength: 30 }), fc.integer({ min: 20, max: 120 }), (steps, longestGap) => {
      let at = 1_000_000;
      const readings = steps.map(([gap, hundredths]) => reading((at += gap), hundredths));
      const { longest } = measureHolds(readings, bounds, longestGap);
      expect(longest).toEqual(bounds.map((bound) => longestAt(readings, bound, longestGap)));
    }),
  );
});

function longestAt(readings: CurveReading[], bound: Bound, longestGap: number): number {
  let longest = -1;
  readings.forEach((start, i) => {
    for (let j = i; j < readings.length; j += 1) {
      const stretch = readings.slice(i, j + 1);
      const isHeld = stretch.every(({ temperature }) => above(temperature, bound) >= 0);
      const isClose = stretch.every(({ at }, k) => k === 0 || at - (stretch[k - 1]?.at ?? 0) <= longestGap);
      if (isHeld && isClose) longest = Math.max(longest, (readings[j]?.at ?? 0) - start.at);
    }
  });
  return longest;
}
