import { describe, expect, test } from 'vitest';
import {
  addedWater,
  analysed,
  binderPercent,
  brineStrength,
  fatAndAddedWater,
  isFault,
  judgeFigure,
  keepsIn,
  limitSetById,
  massOf,
  moistureToProtein,
  mostWaterInAll,
  percentOf,
  pumpedPhosphate,
  replacedByCitric,
  saltInWaterPhase,
  formatMass,
  stabilityOf,
  type FigureLimit,
  type Ratio,
  type OrFault,
} from '@larderbook/haccp';
import { told } from '../support/told';

const lb = (value: number) => massOf({ value, unit: 'lb' });
const oz = (value: number) => massOf({ value, unit: 'oz' });
const limit = (id: string): FigureLimit => {
  const row = limitSetById('us-inspected-2021')?.rows.find((one) => one.id === id);
  if (row?.limit.kind !== 'figure') throw new Error(`no figure ${id}`);
  return row.limit;
};
const verdict = (figure: OrFault<Ratio>, id: string) => {
  const { kind, measured } = told(judgeFigure(isFault(figure) ? undefined : figure, limit(id)));
  return `${kind} ${measured}`;
};

describe('added water and fat, 9 CFR 319.140 and 319.180 (the latter from memory)', () => {
  test.each([
    ['moisture 58.0, protein 12.0', addedWater({ moisture: 58, protein: 12 }), 'water-cooked-sausage', 'met 10 %'],
    ['protein 11.9', addedWater({ moisture: 58, protein: 11.9 }), 'water-cooked-sausage', 'missed 10.4 %'],
    ['a thousandth of a percent more', addedWater({ moisture: 58.001, protein: 12 }), 'water-cooked-sausage', 'missed 10.001 %'],
    ['drier than its meat: none', addedWater({ moisture: 40, protein: 12 }), 'water-cooked-sausage', 'met 0 %'],
    ['fat 28, added water 12', fatAndAddedWater({ moisture: 60, protein: 12, fat: 28 }), 'fat-and-water-frankfurter', 'met 40 %'],
    ['fat 29, added water 12', fatAndAddedWater({ moisture: 60, protein: 12, fat: 29 }), 'fat-and-water-frankfurter', 'missed 41 %'],
    ['fat 31, whatever the water', analysed(31), 'fat-frankfurter', 'missed 31 %'],
    ['fat 30', analysed(30), 'fat-frankfurter', 'met 30 %'],
    ['fat 30.001', analysed(30.001), 'fat-frankfurter', 'missed 30.001 %'],
  ])('%s', (_case, figure, id, expected) => {
    expect(verdict(figure, id)).toBe(expected);
  });

  // 9 CFR 319.141: 3 % of total ingredients. 102 × 3 ÷ 97 = 3.1546… lb.
  test('100 lb of meat and 2 lb of seasoning take 3.15 lb of water at most', () => {
    const most = mostWaterInAll(lb(102), 3);
    if (typeof most !== 'bigint') throw new Error(most.fault.code);
    expect(formatMass(most, 'lb', 2, 'down')).toBe('3.15 lb');
    expect(verdict(percentOf(most, lb(102) + most), 'water-fresh-pork-sausage')).toMatch(/^met/);
    expect(verdict(percentOf(most + 1n, lb(102) + most + 1n), 'water-fresh-pork-sausage')).toMatch(/^missed/);
  });
});

describe('binders, 9 CFR 424.21(c) and 319.140', () => {
  const usual = (mass: bigint) => ({ mass, strength: 'usual' as const });
  const strong = (mass: bigint) => ({ mass, strength: 'strong' as const });
  test.each([
    ['7 lb of dried milk in 200 lb', binderPercent([usual(lb(7))], lb(200)), 'met 3.5 %'],
    ['0.1 lb more', binderPercent([usual(lb(7.1))], lb(200)), 'missed 3.55 %'],
    ['isolated soy 1 % and dried milk 1.75 %', binderPercent([strong(lb(1)), usual(lb(1.75))], lb(100)), 'met 3.5 %'],
    ['2 % isolated soy count as 3.5 %', binderPercent([strong(lb(2))], lb(100)), 'met 3.5 %'],
    ['and a thousandth of a pound more', binderPercent([strong(lb(2.001))], lb(100)), 'missed 3.502 %'],
  ])('%s', (_case, figure, expected) => {
    expect(verdict(figure, 'binders')).toBe(expected);
  });
});

describe('phosphate and accelerators, 9 CFR 424.21(c)', () => {
  test('5 % in the pickle at 10 % pump: 0.5 % of the green weight, 0.4545 % of the pumped', () => {
    const phosphate = pumpedPhosphate(5, 10);
    if (isFault(phosphate)) throw new Error(phosphate.fault.code);
    expect(verdict(phosphate.ofGreen, 'phosphate-poultry')).toBe('met 0.5 %');
    expect(verdict(phosphate.ofPumped, 'phosphate-poultry')).toBe('met 0.455 %');
    const more = pumpedPhosphate(5.001, 10);
    expect(isFault(more) ? more : verdict(more.ofGreen, 'phosphate-poultry')).toBe('missed 0.5001 %');
  });

  test.each([
    ['8 oz of acid pyrophosphate on 100 lb of meat', oz(8), 'met 0.5 %'],
    ['8.5 oz', oz(8.5), 'missed 0.531 %'],
  ])('%s', (_case, mass, expected) => {
    expect(verdict(percentOf(mass, lb(100)), 'acid-pyrophosphate')).toBe(expected);
  });

  test.each([
    ['half the erythorbate replaced by citric acid', 50n, 50n, 'met 50 %'],
    ['51 %', 49n, 51n, 'missed 51 %'],
  ])('%s', (_case, ascorbateOrErythorbate, citric, expected) => {
    expect(verdict(replacedByCitric({ ascorbateOrErythorbate, citric }), 'citric')).toBe(expected);
  });
});

describe('drying (FSIS training material of 2005, pp. 157-168)', () => {
  test.each([
    ['moisture 38, protein 20', 38n, 20n, 'mpr-dry', 'met 1.9'],
    ['moisture 38.1, protein 20', 381n, 200n, 'mpr-dry', 'missed 1.905'],
    ['moisture 31, protein 10', 31n, 10n, 'mpr-semi-dry', 'met 3.1'],
    ['moisture 15, protein 20', 15n, 20n, 'mpr-jerky', 'met 0.75'],
    ['moisture 15.1, protein 20', 151n, 200n, 'mpr-jerky', 'missed 0.755'],
  ])('%s', (_case, moisture, protein, id, expected) => {
    expect(verdict(moistureToProtein(moisture, protein), id)).toBe(expected);
  });

  test.each([
    [5.1, 0.94, 'shelf stable'],
    [4.99, 0.99, 'shelf stable'],
    [6, 0.9, 'shelf stable'],
    [5.2, 0.97, 'perishable'],
    [5.6, 0.95, 'perishable'],
    [5.21, 0.951, 'very perishable'],
  ])('pH %s and a_w %s: %s', (pH, aw, stability) => {
    expect(stabilityOf({ pH, aw })).toBe(stability);
  });

  // FSIS Compliance Guideline for Jerky, 2014, pp. 15-16, in extracts.
  test.each([
    [0.85, 'air'],
    [0.851, 'vacuum, refrigerate after opening'],
    [0.88, 'vacuum, refrigerate after opening'],
    [0.91, 'vacuum, refrigerate after opening'],
    [0.911, 'refrigeration'],
  ])('a_w %s keeps in %s', (aw, where) => {
    expect(keepsIn(aw)).toBe(where);
  });
});

/** Hundredths of a percent rounded half up: worked out beforehand in decimals. */
const toThree = (figure: OrFault<Ratio>): string =>
  isFault(figure) ? figure.fault.code : (Number((figure.numerator * 100_000n) / figure.denominator) / 100_000).toFixed(3);

describe('salt in the water phase: salt ÷ (salt + water) × 100', () => {
  test.each([
    // FSIS training material, p. 160, definition; salt 3.4, moisture 56.7. Pepperoni's 15.58 % is salt ÷ moisture.
    [34n, 567n, '5.657'],
    [405n, 2600n, '13.478'],
    // Vacuum packs: the form of the Food Standards Agency (formula from memory), against 3.5 %.
    [20n, 600n, '3.226'],
    [20n, 550n, '3.509'],
    [22n, 600n, '3.537'],
    [24n, 660n, '3.509'],
    [25n, 650n, '3.704'],
  ])('%s of salt and %s of water', (salt, water, percent) => {
    expect(toThree(saltInWaterPhase(salt, water))).toBe(percent);
    expect(toThree(brineStrength(salt, water))).toBe(percent);
  });

  test('the other formula gives more: 2.0 % in 60 % is 3.33 %', () => {
    expect(toThree(saltInWaterPhase(20n, 600n, 'salt/water'))).toBe('3.333');
    expect(toThree(saltInWaterPhase(405n, 2600n, 'salt/water'))).toBe('15.577');
  });
});
