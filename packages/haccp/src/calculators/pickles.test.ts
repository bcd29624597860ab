import { describe, expect, test } from 'vitest';
import { nitrateComminuted, nitriteComminuted, nitriteComminutedRefrigerated } from '../limit-sets/curing';
import { citricForAccelerator } from './citric-for-accelerator';
import { cureForPickle } from './cure-for-pickle';
import { nitriteFromNaturalSource } from './nitrite-from-natural-source';
import { phosphateInPumpedMeat } from './phosphate-in-pumped-meat';
import { countedBy, figureOfIngoing, judgedBefore, publishedFigure } from './published-figure';
import { pumpByWeight } from './pump-by-weight';
import { strengthOfBrine } from './strength-of-brine';
import { kindsOf as kinds, plainly, resultsBy } from './plain-calculation.test-data';

const kg = (value: number) => ({ value, unit: 'kg' }) as const;
const g = (value: number) => ({ value, unit: 'g' }) as const;

describe('cure for a pickle', () => {
  const asked = { substance: 'sodium nitrite', pickle: kg(10), pump: 10, ppm: 150, strength: 6.25 } as const;

  test('150 ppm at 10 % pump take 15 g of nitrite in 10 kg, that is 240 g of 6.25 % salt', () => {
    const outcome = cureForPickle(asked);
    expect(resultsBy(outcome)).toEqual({ 'weigh-into-pickle': '240 g', 'ingoing-at-this-pump': '150 ppm' });
    expect(plainly(outcome)).toMatchObject({ steps: [{ putIn: '150 × 10000 g ÷ 10 % ÷ 1000000', gives: '15 g' }, { gives: '240 g' }] });
    expect(kinds(outcome)).toEqual(['met']);
  });

  test.each([
    ['sodium nitrite', 200, 'met'],
    ['sodium nitrite', 201, 'missed'],
    ['sodium nitrate', 700, 'met'],
    ['sodium nitrate', 701, 'missed'],
    ['sodium erythorbate', 546, 'met'],
    ['sodium erythorbate', 547, 'missed'],
  ] as const)('%s at %d ppm is %s', (substance, ppm, kind) => {
    const outcome = cureForPickle({ ...asked, substance, ppm, strength: 100 });
    expect(kinds(outcome)).toEqual([kind]);
    if (kind === 'missed') expect(plainly(outcome).verdicts).toMatchObject([{ then: { code: 'aim-at-less' } }]);
  });

  test.each([
    [{ strength: 0 }, 'content-unusable 0 %'],
    [{ pump: 0 }, 'percent-unusable 0 %'],
    [{ ppm: 1.5 }, 'ppm-unusable 1.5 ppm'],
    [{ pickle: kg(0) }, 'pickle-weighs-nothing'],
    [{ ppm: 90_000, strength: 1 }, 'too-much-for-the-pickle'],
  ])('with %j it cannot be', (wrong, why) => {
    expect(plainly(cureForPickle({ ...asked, ...wrong }))).toMatchObject({ cannot: expect.stringContaining(why) });
  });
});

test('1 kg of salt in 9 kg of water is a brine of 10 %; nothing is none', () => {
  expect(resultsBy(strengthOfBrine({ salt: kg(1), water: kg(9) }))).toEqual({ 'strength-by-weight': '10 %' });
  expect(plainly(strengthOfBrine({ salt: kg(0), water: kg(0) }))).toMatchObject({
    cannot: expect.stringContaining('no-weight-to-take-from'),
  });
});

test('10 kg that weigh 11.2 kg were pumped by 12 %; lighter than before is a slip', () => {
  expect(resultsBy(pumpByWeight({ green: kg(10), pumped: kg(11.2) }))).toEqual({ pump: '12 %', 'pickle-in-meat': '1.2 kg' });
  expect(plainly(pumpByWeight({ green: kg(10), pumped: kg(9) }))).toMatchObject({
    cannot: expect.stringContaining('which-weight-is-which'),
  });
});

test('5 % in the pickle at 10 % pump is exactly the most on the green weight; a shade more is over', () => {
  const outcome = phosphateInPumpedMeat({ pickle: 5, pump: 10 });
  expect(resultsBy(outcome)).toEqual({ 'on-green-weight': '0.5 %', 'on-pumped-weight': '0.455 %' });
  expect(kinds(outcome)).toEqual(['met']);
  expect(kinds(phosphateInPumpedMeat({ pickle: 5.0001, pump: 10 }))).toEqual(['missed']);
  expect(plainly(phosphateInPumpedMeat({ pickle: 0, pump: 10 }))).toMatchObject({
    cannot: expect.stringContaining('percentages-above-zero'),
  });
});

test('half of the accelerator may be replaced, 51 % not', () => {
  expect(kinds(citricForAccelerator({ accelerator: g(5), citric: g(5) }))).toEqual(['met']);
  const more = citricForAccelerator({ accelerator: g(4.9), citric: g(5.1) });
  expect([kinds(more), resultsBy(more)]).toEqual([['missed'], { replaced: '51 %' }]);
  expect(plainly(citricForAccelerator({ accelerator: g(0), citric: g(0) }))).toMatchObject({
    cannot: expect.stringContaining('weigh-both'),
  });
});

describe('nitrite from a natural source', () => {
  const certificate = { ingredientLot: 'C-17', percent: 2, plusMinus: 0.2, as: 'NaNO₂' } as const;
  const asked = { natural: g(70), meat: kg(10), ingredientLot: 'C-17', certificate, limit: nitriteComminutedRefrigerated };

  test('a least is held against the least it brings, a most against the most', () => {
    // 70 g × 1.8 % and × 2.2 % on 10 kg
    expect(resultsBy(nitriteFromNaturalSource(asked))).toEqual({ 'at-least': '126 ppm', 'at-most': '154 ppm' });
    expect(kinds(nitriteFromNaturalSource(asked))).toEqual(['met', 'met']);
    expect(kinds(nitriteFromNaturalSource({ ...asked, natural: g(65) }))).toEqual(['missed', 'met']);
    expect(kinds(nitriteFromNaturalSource({ ...asked, natural: g(72) }))).toEqual(['met', 'missed']);
    expect(kinds(nitriteFromNaturalSource({ ...asked, limit: nitriteComminuted }))).toEqual(['met']);
  });

  test('a certificate on the ion is counted by molar mass, and one without a spread is exact', () => {
    const outcome = nitriteFromNaturalSource({ ...asked, certificate: { ingredientLot: 'C-17', percent: 1, as: 'NO₂' } });
    expect(resultsBy(outcome)).toEqual({ 'at-least': '104.98 ppm', 'at-most': '104.99 ppm' });
  });

  test('a limit counted as the ion is held against the ion', () => {
    const asIon = { ...nitriteComminuted, max: 10_300, countedAs: 'NO₂' } as const;
    // 154 ppm of the salt hold 102.69 ppm of the ion
    const outcome = nitriteFromNaturalSource({ ...asked, limit: asIon });
    expect(plainly(outcome).verdicts).toMatchObject([{ kind: 'met', figures: { read: { value: '102.686', unit: 'ppm' } } }]);
    expect(countedBy({ ...nitrateComminuted, countedAs: 'NO₂' }, { numerator: 1n, denominator: 1n })).toHaveProperty('fault');
  });

  test.each([
    [{ ingredientLot: 'C-18' }, 'certificate-of-another-lot C-17 C-18'],
    [{ meat: kg(0) }, 'meat-weighs-nothing'],
    [{ limit: nitrateComminuted }, 'certificate-limit-on-another'],
  ])('with %j it cannot be', (wrong, why) => {
    expect(plainly(nitriteFromNaturalSource({ ...asked, ...wrong }))).toMatchObject({ cannot: expect.stringContaining(why) });
  });
});

test('a published figure is found by its row, a limit without a bound keeps none, and a fault is undetermined', () => {
  expect(publishedFigure('citric')).toMatchObject({ max: 50_000, unit: '%' });
  expect(() => publishedFigure('nowhere')).toThrow('nowhere');
  expect(figureOfIngoing({ ...nitriteComminuted, max: undefined })).not.toHaveProperty('max');
  expect(judgedBefore({ fault: { code: 'no-accelerator' } }, publishedFigure('citric'), 'less').verdict.kind).toBe('undetermined');
});
