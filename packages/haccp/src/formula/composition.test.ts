import { describe, expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { carriedBy, compose, type Parts } from './composition';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const g = (value: number) => massOf({ value, unit: 'g' });
const made = (parts: Partial<Parts>) => compose({ freshMeat: [], weighed: [], reworked: [], ...parts });

const cured = made({
  freshMeat: [kg(6), kg(4)],
  weighed: [{ mass: g(25), substance: 'sodium nitrite', percent: 6.25 }, { mass: g(175) }],
});

describe('what a lot is made of', () => {
  test('rework of a lot into which nothing went brings nothing along', () => {
    const nothing = { ...made({}), substances: cured.substances };
    expect(carriedBy({ mass: kg(1), of: nothing }, 'sodium nitrite')).toBe(0n);
    expect(made({ freshMeat: [kg(2)], reworked: [{ mass: kg(1), of: nothing }] }).meat).toBe(kg(2));
  });

  test('an ingredient whose content cannot be used brings its weight and nothing of the substance', () => {
    const unusable = made({ weighed: [{ mass: g(25), substance: 'sodium nitrite', percent: 101 }] });
    expect(unusable.all).toBe(g(25));
    expect(unusable.substances.get('sodium nitrite')).toBe(0n);
  });

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
    // 0.5 kg of 2.02 kg of the second, which took 1.02 kg of the first, which held 1.5625 g of nitrite in 10.2 kg
    expect(third.substances.get('sodium nitrite')).toBe(38_675_742_574_257n);
  });

  test('rework of a lot nothing went into brings nothing', () => {
    expect(made({ reworked: [{ mass: kg(1), of: made({}) }] })).toMatchObject({ meat: 0n, toSeason: 0n, all: kg(1) });
  });

  test('what was exactly on a limit stays on it, whatever share is taken', () => {
    const share = { mass: massOf({ value: 1234.567, unit: 'oz' }), of: cured };
    const { meat } = made({ reworked: [share] });
    const carried = carriedBy(share, 'sodium nitrite');
    expect(carried * 6400n).toBeLessThanOrEqual(meat); // 156.25 ppm is one part in 6400
    expect((carried + 1n) * 6400n).toBeGreaterThan(meat);
  });

  test('cure weighed before any meat was in is carried all the same', () => {
    const onlyCure = made({ weighed: [{ mass: g(10), substance: 'sodium nitrite', percent: 6.25 }] });
    expect(carriedBy({ mass: g(4), of: onlyCure }, 'sodium nitrite')).toBe(massOf({ value: 250, unit: 'g' }) / 1000n);
    expect(carriedBy({ mass: g(4), of: onlyCure }, 'phosphate')).toBe(0n);
  });
});
