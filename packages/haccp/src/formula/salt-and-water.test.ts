import { describe, expect, test } from 'vitest';
import { judgeFormulation } from '../limits/judge-formulation';
import { massOf } from '../quantity/weigh';
import { saltAndWater, type Holding } from './salt-and-water';

const kg = (value: number) => massOf({ value, unit: 'kg' });
const pork: Holding = { mass: kg(10), name: 'Pork', saltPercent: 0, waterPercent: 70 };
const salt = (kilograms: number): Holding => ({ mass: kg(kilograms), name: 'Salt', saltPercent: 100, waterPercent: 0 });
const source = { citation: 'an example', edition: '', confirmed: false };
const condition = { kind: 'salt in water phase', least: 3000, formula: 'salt/(salt+water)' } as const;

describe('salt and water of what went in', () => {
  // 3 % in the water phase of 7 kg of water: salt ÷ (salt + 7) = 0.03, salt = 0.21 ÷ 0.97 = 0.216495 kg.
  test.each([
    [0.217, 'met'],
    [0.216, 'missed'],
  ])('%d kg of salt on 10 kg of pork: %s', (kilograms, kind) => {
    const phase = saltAndWater([pork, salt(kilograms)], []);
    expect(phase).toEqual({ salt: kg(kilograms), water: kg(7) });
    expect(judgeFormulation(condition, { ...phase }, source).kind).toBe(kind);
  });

  test('one thing of which it is not known leaves all unknown, and is named', () => {
    const spice: Holding = { mass: kg(0.1), name: 'Pepper', saltPercent: 0 };
    expect(saltAndWater([pork, spice, salt(1)], [])).toEqual({ lacking: 'Pepper' });
    expect(judgeFormulation(condition, saltAndWater([pork, spice], []), source)).toMatchObject({
      kind: 'undetermined',
      ...{ finding: 'salt-in-water-phase-unknown', figures: { lacking: 'Pepper' } },
    });
    expect(saltAndWater([{ ...pork, waterPercent: 170 }], [])).toEqual({ lacking: 'Pork' });
  });

  test('each weighing off by its error: less salt and more water', () => {
    const off = (holding: Holding, error: number): Holding => ({ ...holding, error: kg(error) });
    expect(saltAndWater([off(pork, 0.1), off(salt(0.2), 0.001)], [])).toEqual({ salt: kg(0.199), water: kg(7.07) });
    expect(saltAndWater([off(salt(0.2), 0.3)], [])).toEqual({ salt: 0n, water: 0n });
    const of = { salt: kg(0.2), water: kg(7) };
    const rework = { mass: kg(1), name: 'rework of A-1', all: kg(10), of, error: kg(0.5), allWithin: { least: kg(8), most: kg(12.5) } };
    expect(saltAndWater([], [rework])).toEqual({ salt: kg(0.008), water: massOf({ value: 1312.5, unit: 'g' }) });
    expect(saltAndWater([], [{ ...rework, allWithin: { least: 0n, most: kg(1) } }])).toEqual({ lacking: 'rework of A-1' });
  });

  test('rework brings its share; of a lot that is not known, doubt', () => {
    const of = { salt: kg(0.2), water: kg(7) };
    const rework = { mass: kg(1), name: 'rework of A-1', all: kg(10), of };
    expect(saltAndWater([pork], [rework])).toEqual({ salt: kg(0.02), water: kg(7.7) });
    expect(saltAndWater([], [{ ...rework, of: { lacking: 'Pepper' } }])).toEqual({ lacking: 'rework of A-1' });
    expect(saltAndWater([], [{ ...rework, all: 0n }])).toEqual({ lacking: 'rework of A-1' });
  });

  test('salt is rounded down and water up', () => {
    const odd: Holding = { mass: 3n, name: 'odd', saltPercent: 50, waterPercent: 50 };
    expect(saltAndWater([odd], [])).toEqual({ salt: 1n, water: 2n });
  });
});
