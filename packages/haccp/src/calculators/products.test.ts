import { describe, expect, test } from 'vitest';
import { batchByPercent } from './batch-by-percent';
import { bindersInProduct } from './binders-in-product';
import { compositionByAnalysis } from './composition-by-analysis';
import { holdAtAnotherTemperature } from './hold-at-another-temperature';
import { humidityWhileCooking } from './humidity-while-cooking';
import { percentAndWeight } from './percent-and-weight';
import { waterInFinishedProduct } from './water-in-finished-product';
import { waterInFormula, wateredFormulas } from './water-in-formula';
import { kindsOf as kinds, plainly, resultsBy } from './plain-calculation.test-data';

const kg = (value: number) => ({ value, unit: 'kg' }) as const;
const lb = (value: number) => ({ value, unit: 'lb' }) as const;

describe('humidity while cooking', () => {
  const cook = { option: 1, cooking: 180, humid: 90, endpoint: 150, unit: '°F' } as const;

  test.each([
    [{}, '1 h 30 min', 'met'],
    [{ humid: 89 }, '1 h 30 min', 'missed'],
    [{ option: 3 as const, humid: 60 }, '1 h', 'met'],
    [{ option: 4 as const, humid: 179 }, '3 h', 'missed'],
    [{ humid: 0 }, '1 h 30 min', 'missed'],
  ])('with %j at least %s: %s', (other, least, kind) => {
    const outcome = humidityWhileCooking({ ...cook, ...other });
    expect([resultsBy(outcome), kinds(outcome)]).toEqual([{ 'humid-at-least': least }, [kind]]);
    expect(plainly(outcome).notes).toContain('humidity-not-needed');
  });

  test('humid for longer than it cooked, or no cooking at all, cannot be', () => {
    expect(plainly(humidityWhileCooking({ ...cook, humid: 181 }))).toMatchObject({
      cannot: expect.stringContaining('humid-longer-than-cooked'),
    });
    expect(plainly(humidityWhileCooking({ ...cook, cooking: 0, humid: 0 }))).toMatchObject({
      cannot: expect.stringContaining('no-cooking-time'),
    });
  });
});

describe('a hold at another temperature', () => {
  test.each([
    ['cooked product', 75, '°C', '30 s', 'about-time 25.9 s'],
    ['cooked product', 149, '°F', '10 min', 'about-time 9 min 17 s'],
    ['cooked product', 70, '°C', '2 min', 'about-time 2 min'],
    ['burgers', 65, '°C', '14 min', 'about-time 13 min 38 s'],
  ] as const)('%s at %d %s: the printed %s first, %s by the law as support', (product, value, unit, row, law) => {
    const outcome = holdAtAnotherTemperature({ product, value, unit });
    expect(resultsBy(outcome)).toEqual({ 'by-the-printed-row': row, 'by-the-law': law });
    expect(plainly(outcome)).toMatchObject({ verdicts: [], notes: expect.arrayContaining(['row-decides']) as unknown });
  });

  test('below the coldest printed row the law is not drawn on', () => {
    const cold = holdAtAnotherTemperature({ product: 'burgers', value: 59.9, unit: '°C' });
    expect(plainly(cold).cannot).toBe('below-coldest-row-authority 59.9 °C 60 °C');
  });
});

describe('binders and extenders', () => {
  const sausage = { product: 'sausage', finished: lb(200) } as const;

  test('7 lb in 200 lb are 3.5 %, and a tenth more is over', () => {
    expect(kinds(bindersInProduct({ ...sausage, usual: lb(7) }))).toEqual(['met']);
    expect(kinds(bindersInProduct({ ...sausage, usual: lb(7.1) }))).toEqual(['missed']);
  });

  test('the strong ones count 1.75 times, and each has a most of its own', () => {
    const mixed = bindersInProduct({ ...sausage, usual: lb(3.5), isolatedSoy: lb(2) });
    expect([resultsBy(mixed), kinds(mixed)]).toEqual([{ 'counted-together': '3.5 %' }, ['met', 'met']]);
    expect(kinds(bindersInProduct({ ...sausage, caseinate: lb(4.1) }))).toEqual(['missed', 'missed']);
  });

  test('a dish has its own limit and none on the strong ones alone', () => {
    expect(kinds(bindersInProduct({ ...sausage, product: 'chili con carne', isolatedSoy: lb(9) }))).toEqual(['met']);
    expect(kinds(bindersInProduct({ ...sausage, product: 'spaghetti with meat balls', usual: lb(24.1) }))).toEqual(['missed']);
  });

  test.each([
    [{}, 'no-binder'],
    [{ usual: lb(201) }, 'binders-outweigh'],
    [{ finished: lb(0), usual: lb(1) }, 'product-weighs-nothing'],
  ])('with %j it cannot be', (wrong, why) => {
    expect(plainly(bindersInProduct({ ...sausage, ...wrong }))).toMatchObject({ cannot: expect.stringContaining(why) });
  });
});

test.each(wateredFormulas)('102 lb of %s take 3.154 lb of water at 3 %% of all', (product) => {
  expect(resultsBy(waterInFormula({ product, others: lb(102) }))).toMatchObject({ 'water-and-ice-at-most': '3.154 lb' });
  expect(plainly(waterInFormula({ product, others: lb(0) }))).toMatchObject({ cannot: expect.stringContaining('weigh-them-first') });
});

describe('water in a finished product', () => {
  test.each([
    ['cooked sausage', 58, 12, undefined, '58 %', ['met']],
    ['cooked sausage', 58, 11.9, undefined, '57.6 %', ['missed']],
    ['frankfurter or bologna', 56, 11, 28, '56 %', ['met']],
    ['frankfurter or bologna', 56, 11, 29, '55 %', ['missed']],
    ['frankfurter or bologna', 1, 1, 60, '0 %', ['missed']],
    ['dry sausage', 38, 20, undefined, '38 %', ['met']],
    ['dry sausage', 38.001, 20, undefined, '38 %', ['missed']],
    ['semi-dry sausage, shelf stable', 62, 20, undefined, '62 %', ['met']],
    ['jerky', 30.1, 40, 5, '30 %', ['missed']],
  ] as const)('%s, moisture %d, protein %d, fat %s: %s allowed, %j', (product, moisture, protein, fat, allowed, kind) => {
    const outcome = waterInFinishedProduct({ product, moisture, protein, fat });
    expect(resultsBy(outcome)).toMatchObject({ 'moisture-allowed-at-protein': allowed });
    expect(kinds(outcome)).toEqual(kind);
  });

  test.each([
    [{ product: 'frankfurter or bologna', moisture: 56, protein: 11 }, 'fat-too'],
    [{ product: 'jerky', moisture: 101, protein: 11 }, 'analysis-unusable 101 %'],
    [{ product: 'jerky', moisture: 30, protein: 0 }, 'not-analysed'],
  ] as const)('%j cannot be', (given, why) => {
    expect(plainly(waterInFinishedProduct(given))).toMatchObject({ cannot: expect.stringContaining(why) });
  });
});

describe('percent and weight', () => {
  test('0.25 % of 10 kg is 25 g, and 25 g in 10 kg are 0.25 %', () => {
    expect(resultsBy(percentAndWeight({ base: kg(10), percent: 0.25 }))).toEqual({ weight: '25 g' });
    expect(resultsBy(percentAndWeight({ base: kg(10), weight: kg(0.025) }))).toEqual({ percentage: '0.25 %' });
  });

  test.each([
    [{ base: kg(10) }, 'percent-or-weight'],
    [{ base: kg(10), percent: 1, weight: kg(1) }, 'percent-or-weight'],
    [{ base: kg(0), percent: 1 }, 'no-weight-to-take-from'],
    [{ base: kg(0), weight: kg(1) }, 'no-weight-to-take-from'],
  ])('%j cannot be', (given, why) => {
    expect(plainly(percentAndWeight(given))).toMatchObject({ cannot: expect.stringContaining(why) });
  });
});

describe('a batch by percent', () => {
  const lines = [
    { name: 'Salt', percent: 2 },
    { name: 'Water', percent: 8 },
  ];
  const packages = { packages: 100, net: { value: 500, unit: 'g' }, yieldPercent: 80, yieldOn: 'everything' } as const;

  test('from the trimmed meat', () => {
    expect(resultsBy(batchByPercent({ lines, from: { trimmedMeat: kg(10) } }))).toEqual({
      'trimmed-meat': '10 kg',
      Salt: '200 g',
      Water: '800 g',
      'all-together': '11 kg',
    });
  });

  test('back from the packages, by the yield on everything or on the meat', () => {
    // 50 kg packed ÷ 80 % = 62.5 kg of everything; ÷ 110 % is the meat, rounded up
    const whole = batchByPercent({ lines, from: packages });
    expect(resultsBy(whole)).toMatchObject({ 'trimmed-meat': '56818.182 g', 'all-together': '62500 g' });
    expect(plainly(whole)).toMatchObject({ steps: [{ putIn: '100 × 500 g ÷ 80 % ÷ (100 % + 2 % + 8 %)' }, {}, {}] });
    expect(resultsBy(batchByPercent({ lines, from: { ...packages, yieldOn: 'meat block' } }))).toMatchObject({ 'trimmed-meat': '62500 g' });
    expect(plainly(batchByPercent({ lines: [], from: packages })).steps[0]?.rule).toBe('back-from-packages');
  });

  test('a line twice cannot be', () => {
    expect(batchByPercent({ lines: [...lines, ...lines], from: packages })).toHaveProperty('cannot');
  });
});

test.each([
  [0.85, 'kept-in-air'],
  [0.9, 'kept-in-vacuum-refrigerate-after-opening'],
  [0.92, 'kept-in-refrigeration'],
])('a water activity of %d alone keeps it in %s', (aw, keeps) => {
  const analyses = { moisture: 30, protein: 40, fat: 10, salt: 4, aw };
  expect(resultsBy(compositionByAnalysis(analyses))).toMatchObject({ 'kept-by-aw': keeps });
  expect(plainly(compositionByAnalysis({ ...analyses, aw: 1.2 }))).toMatchObject({ cannot: expect.stringContaining('1.2') });
});
