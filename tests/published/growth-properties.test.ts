import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  estimateGrowth,
  fastestCelsius,
  growthClass,
  growthOver,
  growthSetsFor,
  type CurveReading,
  type GrowthOutcome,
  type GrowthSet,
} from '@larderbook/haccp';

const sets = growthSetsFor('mixed or unknown');
const MINUTE = 60_000;
const step = (coldest: number, hottest: number) => fc.tuple(fc.integer({ min: 1, max: 240 }), fc.integer({ min: coldest, max: hottest }));
const steps = fc.array(step(-500, 8000), { minLength: 2, maxLength: 20 });
const anySet = fc.constantFrom(...sets);

/** Minutes from reading to reading, hundredths of a °C. */
function curve(taken: readonly (readonly [number, number])[], start = 0): CurveReading[] {
  let at = start;
  return taken.map(([minutes, hundredths]) => {
    at += minutes * MINUTE;
    return { at, temperature: { hundredths, unit: '°C' } };
  });
}
function figures(readings: readonly CurveReading[], set: GrowthSet): number[] {
  const outcome: GrowthOutcome = estimateGrowth(readings, set.species, { longestGap: 30 * MINUTE });
  if (outcome.kind !== 'estimate') return [NaN];
  const { byStraightLines, atMost } = outcome.highest;
  return [byStraightLines.noLag, byStraightLines.withLag, atMost.noLag, atMost.withLag];
}

test('with lag is never more than without, and across gaps never less than by straight lines', () => {
  fc.assert(
    fc.property(steps, anySet, (taken, set) => {
      const [noLag = NaN, withLag = NaN, mostNoLag = NaN, mostWithLag = NaN] = figures(curve(taken), set);
      expect(withLag).toBeLessThanOrEqual(noLag + 1e-12);
      expect(mostWithLag).toBeLessThanOrEqual(mostNoLag + 1e-12);
      expect(mostNoLag).toBeGreaterThanOrEqual(noLag - 1e-9);
      expect(withLag).toBeGreaterThanOrEqual(0);
    }),
  );
});

test('a segment split anywhere gives the same', () => {
  const celsius = fc.double({ min: -5, max: 80, noNaN: true });
  fc.assert(
    fc.property(celsius, celsius, fc.double({ min: 0.01, max: 0.99, noNaN: true }), anySet, (a, b, share, set) => {
      const middle = a + (b - a) * share;
      const split = growthOver(set, a, middle, 10 * share) + growthOver(set, middle, b, 10 * (1 - share));
      expect(split).toBeCloseTo(growthOver(set, a, b, 10), 9);
    }),
  );
});

test('all times shifted change nothing', () => {
  fc.assert(
    fc.property(steps, anySet, fc.integer({ min: -1e9, max: 1.8e12 }), (taken, set, start) => {
      expect(figures(curve(taken, start), set)).toEqual(figures(curve(taken), set));
    }),
  );
});

test('the same curve in °F gives the same to 1e-9', () => {
  fc.assert(
    fc.property(fc.array(step(-100, 1600), { minLength: 2, maxLength: 20 }), anySet, (taken, set) => {
      // Five hundredths of a °C are exactly nine of a °F.
      const celsius = curve(taken.map(([minutes, fives]) => [minutes, fives * 5]));
      const fahrenheit = celsius.map(({ at, temperature }): CurveReading => {
        return { at, temperature: { hundredths: (temperature.hundredths / 5) * 9 + 3200, unit: '°F' } };
      });
      figures(fahrenheit, set).forEach((value, i) => expect(value).toBeCloseTo(figures(celsius, set)[i] ?? NaN, 9));
    }),
  );
});

test('warmer throughout, and not above the optimum, never means less growth', () => {
  const cool = fc.array(step(0, 4000), { minLength: 2, maxLength: 15 });
  fc.assert(
    fc.property(cool, fc.integer({ min: 0, max: 400 }), anySet, (taken, warmer, set) => {
      expect(fastestCelsius(set)).toBeGreaterThan(44);
      const warm = figures(curve(taken.map(([minutes, hundredths]) => [minutes, hundredths + warmer])), set);
      figures(curve(taken), set).forEach((value, i) => expect(warm[i]).toBeGreaterThanOrEqual(value - 1e-12));
    }),
  );
});

test('whatever comes in, there is an outcome and nothing is thrown', () => {
  const anything = fc.record({
    at: fc.oneof(fc.double(), fc.integer()),
    temperature: fc.record({
      hundredths: fc.oneof(fc.double(), fc.integer({ min: -5000, max: 40_000 })),
      unit: fc.constantFrom('°C' as const, '°F' as const),
    }),
  });
  const options = fc.record({ cookingEnded: fc.double(), longestGap: fc.double() }, { requiredKeys: [] });
  fc.assert(
    fc.property(fc.array(anything, { maxLength: 8 }), options, (readings, how) => {
      const outcome = estimateGrowth(readings, 'mixed or unknown', how);
      expect(['estimate', 'undetermined']).toContain(outcome.kind);
      if (outcome.kind === 'estimate') expect(outcome.highest.byStraightLines.withLag).toBeGreaterThanOrEqual(0);
    }),
  );
});

test.each([
  [0, 'below 0.5 log'],
  [0.4999, 'below 0.5 log'],
  [0.5, '0.5 to 1 log'],
  [1, '1 to 2 log'],
  [2, 'above 2 log'],
  [NaN, 'above 2 log'],
])('%s is shown as %s', (log10, shown) => {
  expect(growthClass(log10)).toBe(shown);
});
