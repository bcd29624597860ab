import { describe, expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { compose, contentOf, type Parts } from './composition';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const g = (value: number) => massOf({ value, unit: 'g' });
const made = (parts: Partial<Parts>) => compose({ freshMeat: [], weighed: [], reworked: [], ...parts });

const cured = made({ freshMeat: [kg(6), kg(4)], weighed: [{ mass: g(25), substance: 'sodium nitrite', percent: 6.25 }, { mass: g(175) }] });

describe('what a lot is made of', () => {
  test('fresh meat is the meat block, and all of it is to be seasoned', () => {
    expect(cured).toMatchObject({ meat: kg(10), toSeason: kg(10), all: kg(10.2) });
  });

  test('25 g of 6.25 % curing salt hold 1.5625 g of nitrite', () => {
    expect(cured.substances.get('sodium nitrite')).toBe(massOf({ value: 1562.5, unit: 'g' }) / 1000n);
  });

  test('rework brings along its meat and its cure, and is not seasoned again', () => {
    const next = made({ freshMeat: [kg(10)], reworked: [{ mass: kg(2.04), of: cured }] });
    expect(next).toMatchObject({ meat: kg(12), toSeason: kg(10), all: kg(12.04) });
    expect(next.substances.get('sodium nitrite')).toBe(massOf({ value: 312.5, unit: 'g' }) / 1000n);
  });

  test('plain meat of an earlier lot is meat like any other', () => {
    const boned = made({ freshMeat: [kg(8)] });
    expect(made({ reworked: [{ mass: kg(5), of: boned }] })).toMatchObject({ meat: kg(5), toSeason: kg(5) });
  });

  test('rework of rework still carries its cure', () => {
    const again = made({ freshMeat: [kg(1)], reworked: [{ mass: kg(1.02), of: cured }] });
    const third = made({ reworked: [{ mass: kg(0.5), of: again }] });
    expect(third.toSeason).toBe(0n);
    expect(contentOf(third, 'sodium nitrite')).toBeGreaterThanOrEqual(contentOf(again, 'sodium nitrite'));
  });

  test('rework of a lot nothing went into brings nothing', () => {
    expect(made({ reworked: [{ mass: kg(1), of: made({}) }] })).toMatchObject({ meat: 0n, toSeason: 0n, all: kg(1) });
  });

  test('content is rounded up, never down: doubt counts as more cure', () => {
    expect(contentOf(cured, 'sodium nitrite')).toBe(0.0154); // 1.5625 g ÷ 10 200 g = 0.015318… %
    expect(contentOf(cured, 'phosphate')).toBe(0);
  });
});
