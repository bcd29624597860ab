import { describe, expect, test } from 'vitest';
import {
  addedWater,
  batchOf,
  binderPercent,
  brineStrength,
  doseFor,
  formulaPercentOf,
  ingoingPpm,
  isFault,
  judgeConcentration,
  judgeFigure,
  keepsIn,
  limitSetById,
  massOf,
  moistureToProtein,
  mostWaterInAll,
  nitriteComminuted,
  percentOf,
  pumpedPhosphate,
  pumpPercent,
  replacedByCitric,
  stabilityOf,
  substanceForPickle,
  substanceIn,
  weightOf,
  type FigureLimit,
} from '@larderbook/haccp';

const g = (value: number) => massOf({ value, unit: 'g' });
const kg = (value: number) => massOf({ value, unit: 'kg' });
const limitOf = (set: string, id: string) => {
  const row = limitSetById(set)?.rows.find((one) => one.id === id);
  if (!row) throw new Error(`${set} has no ${id}`);
  return row.limit;
};

/** Nothing typed wrong is ever an exception, a zero or a verdict of met. */
describe('bad input comes back as a sentence', () => {
  const notNumbers = [NaN, Infinity, -Infinity, -1, 0.00001];
  test.each(notNumbers)('%s', (bad) => {
    const results: unknown[] = [
      weightOf(bad, kg(1)),
      substanceIn(kg(1), bad),
      substanceForPickle(bad, kg(1), 10),
      substanceForPickle(120, kg(1), bad),
      ingoingPpm({ method: 'pumped', substance: g(1), pickle: kg(1), pumpPercent: bad }),
      ingoingPpm({ method: 'immersed', substance: g(1), pickle: kg(1), pickUpPercent: bad }),
      addedWater({ moisture: bad, protein: 12 }),
      mostWaterInAll(kg(1), bad),
      pumpedPhosphate(bad, 10),
      pumpedPhosphate(5, bad),
      stabilityOf({ pH: bad, aw: 0.9 }),
      keepsIn(bad),
      batchOf([{ name: 'Salt', percent: bad }], { trimmedMeat: kg(1) }),
      batchOf([{ name: 'Salt', percent: 2 }], {
        packages: bad,
        netWeight: g(250),
        yieldPercent: 90,
        yieldOn: 'everything',
      }),
      batchOf([{ name: 'Salt', percent: 2 }], {
        packages: 1,
        netWeight: g(250),
        yieldPercent: bad,
        yieldOn: 'everything',
      }),
    ];
    for (const result of results) expect(result).toHaveProperty('fault');
    expect(doseFor(nitriteComminuted, kg(1), bad)).toBeUndefined();
    expect(judgeConcentration([{ mass: g(1), percent: bad }], kg(1), nitriteComminuted).kind).toBe('undetermined');
  });

  test.each([0n, -1n])('no meat block: %s', (meat) => {
    const results: unknown[] = [
      ingoingPpm({ method: 'chopped', substance: g(1), greenMeat: meat }),
      ingoingPpm({ method: 'dry-cured', substance: g(1), greenMeat: meat }),
      ingoingPpm({ method: 'immersed until even', substance: g(1), greenMeat: meat, pickle: kg(1) }),
      ingoingPpm({ method: 'per batch', substance: g(1), batch: meat }),
      ingoingPpm({ method: 'pumped', substance: g(1), pickle: meat, pumpPercent: 10 }),
      weightOf(2, meat),
      percentOf(g(1), meat),
      formulaPercentOf(g(1), meat),
      batchOf([{ name: 'Salt', percent: 2 }], { trimmedMeat: meat }),
      batchOf([{ name: 'Salt', percent: 2 }], {
        packages: 1,
        netWeight: meat,
        yieldPercent: 90,
        yieldOn: 'everything',
      }),
      binderPercent([], meat),
      moistureToProtein(1n, meat),
      brineStrength(meat, 0n),
      pumpPercent(meat, kg(1)),
      replacedByCitric({ ascorbateOrErythorbate: meat, citric: 0n }),
      mostWaterInAll(meat, 3),
      substanceForPickle(120, meat, 10),
    ];
    for (const result of results) expect(result).toHaveProperty('fault');
    expect(judgeConcentration([{ mass: g(1), percent: 6.25 }], meat, nitriteComminuted).kind).toBe('undetermined');
  });

  test('less than nothing of a substance', () => {
    expect(isFault(ingoingPpm({ method: 'chopped', substance: -1n, greenMeat: kg(1) }))).toBe(true);
    expect(isFault(binderPercent([{ mass: -1n, strength: 'usual' }], kg(1)))).toBe(true);
    expect(pumpPercent(kg(2), kg(1))).toHaveProperty('fault');
  });

  test('no figure, or one without a weight below it, is undetermined', () => {
    const limit = limitOf('us-inspected-2021', 'binders') as FigureLimit;
    for (const figure of [
      undefined,
      { numerator: 1n, denominator: 0n },
      { numerator: 1n, denominator: -1n },
      { numerator: -1n, denominator: 1n },
    ])
      expect(judgeFigure(figure, limit).kind).toBe('undetermined');
    for (const bad of [NaN, Infinity, 0.5, undefined])
      expect(judgeFigure({ numerator: 0n, denominator: 1n }, { ...limit, max: bad }).kind).toBe('undetermined');
  });
});
