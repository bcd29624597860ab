import { describe, expect, test } from 'vitest';
import {
  daysToHundredfold,
  factorsOf,
  listeriaGrowth,
  listeriaRate,
  outOfRange,
  waterActivity,
  type ListeriaProduct,
} from '@larderbook/haccp';

/**
 * Mejlholm and Dalgaard 2009, parameters from two public copies that agree to six digits without diacetate; figures
 * worked out beforehand.
 */
const a: ListeriaProduct = { waterPhaseSalt: 3, pH: 6.2 };
const b: ListeriaProduct = { ...a, nitritePpm: 20, phenolsPpm: 5 };
const c: ListeriaProduct = { waterPhaseSalt: 3.5, pH: 6.1, nitritePpm: 20, phenolsPpm: 8, lacticPpm: 15_000 };
const d: ListeriaProduct = { ...c, waterPhaseSalt: 4, pH: 6, lacticPpm: 20_000, diacetatePpm: 1500 };

const dayAt = (product: ListeriaProduct, celsius: number): number => {
  const growth = listeriaGrowth(product, [{ celsius, hours: 24 }]);
  return growth.kind === 'estimate' ? growth.log10 : NaN;
};
const rateAt = (product: ListeriaProduct, celsius: number) => listeriaRate(factorsOf(product, celsius));

describe('no acid: rate per hour, log10 a day, days from 1 to 100 CFU/g', () => {
  test.each([
    [2, 0.00928, 0.0967, 20.68, 0.006961, 0.0726, 27.57],
    [4, 0.018556, 0.1934, 10.34, 0.013919, 0.1451, 13.79],
    [5, 0.024388, 0.2542, 7.87, 0.018293, 0.1907, 10.49],
    [8, 0.046656, 0.4863, 4.11, 0.034995, 0.3648, 5.48],
    [10, 0.065479, 0.6825, 2.93, 0.049114, 0.5119, 3.91],
  ])('%s °C, plain and with nitrite and smoke', (celsius, ...printed) => {
    const all = [a, b].flatMap((product) => {
      const rate = rateAt(product, celsius);
      return [rate.perHour, dayAt(product, celsius), daysToHundredfold(rate)];
    });
    expect(all).toEqual(printed.map((value, index) => expect.closeTo(value, [6, 4, 2][index % 3])));
  });
});

describe('with lactate, near the growth boundary', () => {
  test.each([
    [2, 0.9799, 0.000174, 0.0018, 2.1447],
    [4, 0.7677, 0.004021, 0.0419, 1.6689],
    [5, 0.6902, 0.007047, 0.0735, 1.4989],
    [8, 0.5148, 0.021115, 0.2201, 1.1221],
    [10, 0.4276, 0.030539, 0.3183, 0.9384],
  ])('%s °C', (celsius, psi, perHour, perDay, psiWithDiacetate) => {
    expect(rateAt(c, celsius)).toEqual({ psi: expect.closeTo(psi, 4), perHour: expect.closeTo(perHour, 6) });
    expect(dayAt(c, celsius)).toBeCloseTo(perDay, 4);
    expect(rateAt(d, celsius).psi).toBeCloseTo(psiWithDiacetate, 4);
    expect(dayAt(d, celsius) > 0).toBe(psiWithDiacetate < 1);
  });

  test('with diacetate something still grows at 10 °C, and nowhere below', () => {
    expect(rateAt(d, 10).perHour).toBeCloseTo(0.001676, 6);
    expect(daysToHundredfold(rateAt(d, 8))).toBe(Infinity);
  });
});

test.each([
  [2, 0.989018],
  [3, 0.98316],
  [4, 0.977059],
  [5, 0.970713],
])('water activity at %s %% salt in the water phase', (salt, printed) => {
  expect(waterActivity(salt)).toBeCloseTo(printed, 6);
});

test('storage that changes: 10 days at 4 °C, one at 9 °C, 10 at 4 °C', () => {
  const growth = listeriaGrowth(
    b,
    [4, 9, 4].map((celsius) => ({ celsius, hours: celsius === 9 ? 24 : 240 })),
  );
  expect(growth).toMatchObject({ is: 'model estimate', version: '1', source: { confirmed: false } });
  expect(growth.kind === 'estimate' && growth.log10).toBeCloseTo(3.3367, 4);
});

describe('outside what the equations cover nothing is said, and the variable is named', () => {
  test.each([
    ['frozen hard', { ...a }, -18, 'celsius'],
    ['warmer than the reference', { ...a }, 25.01, 'celsius'],
    ['no temperature', { ...a }, NaN, 'celsius'],
    ['dry and salty', { ...a, waterPhaseSalt: 12 }, 4, 'waterActivity'],
    ['less than no salt', { ...a, waterPhaseSalt: -1 }, 4, 'waterActivity'],
    ['sour', { ...a, pH: 4.9 }, 4, 'pH'],
    ['no pH', { ...a, pH: NaN }, 4, 'pH'],
    ['a typing error in the pH', { ...a, pH: 62 }, 4, 'pH'],
    ['more smoke than any', { ...a, phenolsPpm: 33 }, 4, 'phenolsPpm'],
    ['more nitrite than any', { ...a, nitritePpm: 351 }, 4, 'nitritePpm'],
    ['less than no nitrite', { ...a, nitritePpm: -1 }, 4, 'nitritePpm'],
    ['more carbon dioxide than any', { ...a, carbonDioxidePpm: 3141 }, 4, 'carbonDioxidePpm'],
    ['too much lactic acid', { ...a, lacticPpm: 100_000 }, 4, 'lactic'],
    ['too much acetic acid', { ...a, aceticPpm: 20_000 }, 4, 'acetic'],
    ['too much diacetate', { ...a, diacetatePpm: 20_000 }, 4, 'diacetate'],
  ])('%s', (_case, product, celsius, variable) => {
    expect(listeriaGrowth(product, [{ celsius, hours: 24 }])).toMatchObject({ kind: 'undetermined', variable });
    expect(outOfRange(factorsOf(product, celsius))).toMatchObject({ variable, least: expect.any(Number), most: expect.any(Number) });
  });

  test('one figure at its very end stops growth by itself', () => {
    expect(rateAt({ ...a, nitritePpm: 350 }, 4)).toEqual({ perHour: 0, psi: Infinity });
  });

  test.each([
    ['no storage at all', []],
    ['a time that runs backwards', [{ celsius: 4, hours: -1 }]],
    ['a time without end', [{ celsius: 4, hours: Infinity }]],
    ['no time', [{ celsius: 4, hours: NaN }]],
  ])('%s', (_case, storage) => {
    expect(listeriaGrowth(a, storage)).toMatchObject({ kind: 'undetermined', variable: 'hours' });
  });
});
