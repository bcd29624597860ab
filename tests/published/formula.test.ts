import { describe, expect, test } from 'vitest';
import {
  asSpecies,
  batchOf,
  brineStrength,
  doseFor,
  doseOnScale,
  formulaPercentOf,
  ingoingPpm,
  judgeConcentration,
  judgeFigure,
  limitSetById,
  massOf,
  nitriteByCertificate,
  nitriteComminuted,
  percentOf,
  pumpPercent,
  formatMass,
  substanceIn,
  weightOf,
  type ConcentrationLimit,
  type Cure,
  type CuringSpecies,
  type FigureLimit,
  type Fault,
} from '@larderbook/haccp';
import { formatIngoing, formatPpmAs } from '../support/format-ppm';
import { told } from '../support/told';

const g = (value: number) => massOf({ value, unit: 'g' });
const kg = (value: number) => massOf({ value, unit: 'kg' });
const lb = (value: number) => massOf({ value, unit: 'lb' });
const worked = <Result>(result: Result | Fault): Result => {
  if (typeof result === 'object' && result !== null && 'fault' in result) throw new Error(result.fault.code);
  return result as Result;
};
const say = (cure: Cure, decimals = 2) => formatIngoing(worked(ingoingPpm(cure)), decimals);
const limitOf = (set: string, id: string) => {
  const row = limitSetById(set)?.rows.find((one) => one.id === id);
  if (!row) throw new Error(`${set} has no ${id}`);
  return row.limit;
};

describe('the boundary of chopped meat: ¼ oz per 100 lb is 156.25 ppm (9 CFR 424.21(c))', () => {
  const salt = (mass: bigint) => [{ mass, percent: 6.25 }];
  test.each([
    ['2.5 g per kg', g(2.5), kg(1), 'met'],
    ['2.501 g per kg', g(2.501), kg(1), 'missed'],
    ['2.51 g per kg', g(2.51), kg(1), 'missed'],
    ['2.499 g per kg', g(2.499), kg(1), 'met'],
    ['4 oz per 100 lb', massOf({ value: 4, unit: 'oz' }), lb(100), 'met'],
    ['4.001 oz per 100 lb', massOf({ value: 4.001, unit: 'oz' }), lb(100), 'missed'],
    ['3.999 oz per 100 lb', massOf({ value: 3.999, unit: 'oz' }), lb(100), 'met'],
    ['0.25 lb per 100 lb', lb(0.25), lb(100), 'met'],
    ['0.251 lb per 100 lb', lb(0.251), lb(100), 'missed'],
    ['a femtogram more', g(2.5) + 1n, kg(1), 'missed'],
    ['0.113 kg on 45.359 kg', kg(0.113), kg(45.359), 'met'],
    ['0.114 kg on 45.359 kg', kg(0.114), kg(45.359), 'missed'],
  ])('%s of 6.25 %% curing salt', (_case, mass, meat, kind) => {
    expect(judgeConcentration(salt(mass), meat, nitriteComminuted).kind).toBe(kind);
  });

  test('the most that may be weighed is exactly 2.5 g a kilo, and a kitchen scale cannot weigh it', () => {
    const dose = doseFor(nitriteComminuted, kg(1), 6.25) ?? {};
    expect(dose.most).toBe(g(2.5));
    expect(doseOnScale(dose, { step: g(1) }).isFineEnough).toBe(false);
    expect(doseOnScale(dose, { step: g(0.1) }).isFineEnough).toBe(true);
  });
});

/** Factors from atomic masses; Regulation (EU) 2023/2108 rounds the first and third to 0.67 and 0.73. */
describe('nitrite and nitrate as salt and as ion', () => {
  test.each<[CuringSpecies, CuringSpecies, number]>([
    ['NaNO₂', 'NO₂', 0.6668],
    ['KNO₂', 'NO₂', 0.5406],
    ['NaNO₃', 'NO₃', 0.7295],
    ['KNO₃', 'NO₃', 0.6133],
    ['KNO₂', 'NaNO₂', 0.8107],
    ['KNO₃', 'NaNO₃', 0.8407],
  ])('%s → %s: %s', (salt, ion, factor) => {
    const { numerator = 0n, denominator = 1n } = asSpecies(salt, ion) ?? {};
    expect((Number((numerator * 1_000_000n) / denominator) / 1_000_000).toFixed(4)).toBe(factor.toFixed(4));
  });

  test.each<[number, CuringSpecies, CuringSpecies, string]>([
    [150, 'NaNO₂', 'NO₂', '100.02 ppm as NO₂'],
    [100, 'NaNO₂', 'NO₂', '66.68 ppm as NO₂'],
    [150, 'NaNO₃', 'NO₃', '109.43 ppm as NO₃'],
    [80, 'NO₂', 'NaNO₂', '119.98 ppm as NaNO₂'],
    [55, 'NO₂', 'NaNO₂', '82.48 ppm as NaNO₂'],
    [90, 'NO₃', 'NaNO₃', '123.37 ppm as NaNO₃'],
    [120, 'NaNO₂', 'KNO₂', '148.02 ppm as KNO₂'],
  ])('%s ppm %s are %s: %s', (ppm, species, other, said) => {
    expect(formatPpmAs(ppm, species, other)).toBe(said);
  });

  test('nitrite is never counted as nitrate', () => {
    expect(asSpecies('NaNO₂', 'NO₃')).toBeUndefined();
    expect(formatPpmAs(80, 'NO₂', 'NO₃')).toBe('no figure as NO₃');
  });
});

/** Arithmetic by hand on the rules as printed: per kg of meat and per kg of the whole batch. */
describe('the same recipe on two bases', () => {
  const cases = [
    ['250 g of 0.6 % salt in 10 kg', 250, 0.6, 0, '150', '146.34', 97.6],
    ['the same with 0.50 kg of water', 250, 0.6, 500, '150', '139.53', 93.0],
    ['20 g of 6.25 % salt in 10 kg', 20, 6.25, 0, '125', '124.75', 83.2],
    ['200 g of 0.5 % salt in 10 kg', 200, 0.5, 0, '100', '98.04', 65.4],
  ] as const;
  test.each(cases)('%s', (_case, salt, percent, water, perMeat, perBatch, asIon) => {
    const substance = worked(substanceIn(g(salt), percent));
    expect(say({ method: 'chopped', substance, greenMeat: kg(10) })).toBe(`${perMeat} ppm`);
    expect(say({ method: 'per batch', substance, batch: kg(10) + g(salt) + g(water) })).toBe(`${perBatch} ppm`);
    const { numerator = 0n, denominator = 1n } = asSpecies('NaNO₂', 'NO₂') ?? {};
    const ion = {
      method: 'per batch',
      substance: (substance * numerator) / denominator,
      batch: kg(10) + g(salt) + g(water),
    } as const;
    expect(Number(say(ion, 1).split(' ')[0])).toBe(asIon);
  });

  test.each([
    // Regulation (EU) 2023/2108: 80 mg/kg as NO₂ are 119.9773 as NaNO₂, 23.9955 g of 0.5 % salt or 19.9962 g of 0.6 %.
    ['european-union-2025', 'nitrite-heat-treated', 0.5, '23.995 g'],
    ['european-union-2025', 'nitrite-heat-treated', 0.6, '19.996 g'],
    // Canada: 200 ppm take 3.2 g of 6.25 % per kg.
    ['canada-2026', 'nitrite-comminuted', 6.25, '3.2 g'],
  ])('%s, %s: most of a %s %% salt per kg', (set, id, percent, most) => {
    const limit = limitOf(set, id) as ConcentrationLimit;
    expect(formatMass(doseFor(limit, kg(1), percent)?.most ?? 0n, 'g', 3, 'down')).toBe(most);
  });

  test.each([
    ['european-union-2025', 'nitrite-heat-treated', 'missed', '83.35 ppm as NO₂'],
    ['european-union-2008', 'nitrite-heat-treated', 'met', '125 ppm'],
    ['united-kingdom-2026', 'nitrite-heat-treated', 'met', '125 ppm'],
    ['canada-2026', 'nitrite-comminuted', 'met', '125 ppm'],
    ['us-inspected-2021', 'nitrite-comminuted', 'met', '125 ppm'],
  ])('20 g of 6.25 %% on 10 kg of meat, %s: %s, %s', (set, id, kind, measured) => {
    const limit = limitOf(set, id) as ConcentrationLimit;
    expect(told(judgeConcentration([{ mass: g(20), percent: 6.25 }], kg(10), limit))).toMatchObject({ kind, measured });
  });

  test('Canada asks for at least 100 ppm on the batch as well', () => {
    const least = limitOf('canada-2026', 'nitrite-least') as FigureLimit;
    const on = (salt: number) => worked(ingoingPpm({ method: 'per batch', substance: worked(substanceIn(g(salt), 6.25)), batch: kg(10) }));
    expect([on(16), on(15.999)].map((figure) => judgeFigure(figure, least).kind)).toEqual(['met', 'missed']);
  });
});

describe('bacon, 9 CFR 424.22(b), as quoted by two documents', () => {
  const nitrite = limitOf('us-inspected-2021', 'bacon-pumped-nitrite') as ConcentrationLimit;
  const accelerator = limitOf('us-inspected-2021', 'bacon-pumped-accelerator') as FigureLimit;
  const fermenting = limitOf('us-inspected-2021', 'bacon-fermenting-nitrite') as FigureLimit;
  const pumped = (grams: number) => worked(ingoingPpm({ method: 'pumped', substance: g(grams), pickle: kg(1), pumpPercent: 10 }));

  test.each([
    [120, 'met'],
    [120.001, 'missed'],
  ])('%s g of nitrite on 1000 kg of bellies: %s', (grams, kind) => {
    expect(judgeConcentration([{ mass: g(grams), percent: 100 }], kg(1000), nitrite).kind).toBe(kind);
  });

  test.each([
    ['exactly 550 ppm', 5.5, 'met'],
    ['a hair less', 5.499, 'missed'],
    ['a hair more', 5.501, 'missed'],
  ])('erythorbate, %s', (_case, grams, kind) => {
    expect(judgeFigure(pumped(grams), accelerator).kind).toBe(kind);
  });

  test.each([
    [0.4, 'met'],
    [0.8, 'met'],
    [0.399, 'missed'],
    [0.801, 'missed'],
  ])('with sugar and lactic culture, %s g of nitrite in a kilo of pickle: %s', (grams, kind) => {
    expect(judgeFigure(pumped(grams), fermenting).kind).toBe(kind);
  });
});

describe('percent and weight, both ways', () => {
  test('25 g on 10 kg are 0.25 %, and back', () => {
    expect(formulaPercentOf(g(25), kg(10))).toBe(0.25);
    expect(weightOf(0.25, kg(10))).toBe(g(25));
    expect(worked(percentOf(g(25), kg(10)))).toEqual({ numerator: g(2500), denominator: kg(10) });
  });

  const lines = [
    { name: 'Salt', percent: 1.75 },
    { name: 'Curing salt 6.25 %', percent: 0.25 },
    { name: 'Ice', percent: 8 },
  ];
  test('from trimmed meat, and back from packages through the yield on either base', () => {
    const fromMeat = worked(batchOf(lines, { trimmedMeat: kg(20) }));
    expect(fromMeat.all).toBe(kg(22));
    const packages = { packages: 80, netWeight: g(250), yieldPercent: 90.9091 };
    const onAll = worked(batchOf(lines, { ...packages, yieldOn: 'everything' }));
    expect(formatMass(onAll.meat, 'kg', 3, 'up')).toBe('20 kg');
    const onMeat = worked(batchOf(lines, { ...packages, yieldPercent: 100, yieldOn: 'meat block' }));
    expect(onMeat.meat).toBe(kg(20));
  });

  // (12 − 10) ÷ 10 = 20 %; 5 kg of salt in 25 kg of brine are 20 %.
  test('pump and brine strength', () => {
    expect(worked(pumpPercent(kg(10), kg(12)))).toEqual({ numerator: kg(2) * 100n, denominator: kg(10) });
    expect(worked(brineStrength(kg(5), kg(20)))).toEqual({ numerator: kg(5) * 100n, denominator: kg(25) });
  });
});

describe('nitrite from a natural source, by its certificate', () => {
  const certificate = { ingredientLot: 'C-7', percent: 2, as: 'NaNO₂' as const };
  test('30 g at 2 % bring 0.6 g of sodium nitrite', () => {
    expect(nitriteByCertificate(g(30), 'C-7', certificate)).toEqual({ least: g(0.6), most: g(0.6) });
  });
  test('a spread counts against both limits, and the ion is converted', () => {
    expect(nitriteByCertificate(g(30), 'C-7', { ...certificate, plusMinus: 0.2 })).toEqual({
      least: g(0.54),
      most: g(0.66),
    });
    const asIon = worked(nitriteByCertificate(g(30), 'C-7', { ...certificate, as: 'NO₂' }));
    expect(formatMass(asIon.most, 'g', 3)).toBe('0.9 g');
    expect(asIon.most - asIon.least).toBe(1n);
  });
  test.each([
    ['no certificate', 'C-7', undefined],
    ['one for another lot', 'C-8', certificate],
    ['a content that is no number', 'C-7', { ...certificate, percent: NaN }],
    ['a spread wider than the content', 'C-7', { ...certificate, plusMinus: 3 }],
  ])('%s brings no figure', (_case, lot, given) => {
    expect(nitriteByCertificate(g(30), lot, given)).toHaveProperty('fault');
  });
});
