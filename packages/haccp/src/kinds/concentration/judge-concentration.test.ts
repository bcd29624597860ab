import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { erythorbateComminuted, nitriteComminuted, nitriteComminutedRefrigerated } from '../../limit-sets/curing';
import type { Quantity } from '../../quantity/quantity';
import { massFromGrams, massOf, formatMass } from '../../quantity/weigh';
import { doseFor } from './dose-for';
import { judgeConcentration } from './judge-concentration';
import type { ConcentrationLimit } from './concentration-limit';
import { plainly, type Plainly } from '../../limits/plainly.test-data';

const g = (value: number) => massOf({ value, unit: 'g' });
const kg = (value: number) => massOf({ value, unit: 'kg' });
const curingSalt = (grams: number, percent = 6.25) => ({ mass: g(grams), percent, name: 'curing salt' });

test.each([
  ['the standard dose of 2.5 g per kg', 2.5, 'ppm-within', '156.25 ppm', '0 ppm'],
  ['a hundredth of a gram more', 2.51, 'ppm-above', '156.88 ppm', '0.63 ppm'],
  ['a thousandth of a gram more', 2.501, 'ppm-above', '156.31 ppm', '0.07 ppm'],
  ['a thousandth of a gram less', 2.499, 'ppm-within', '156.19 ppm', '0.06 ppm'],
])('%s of 6.25 %% curing salt', (_case, grams, finding, ppm, by) => {
  const isWithin = finding === 'ppm-within';
  expect(plainly(judgeConcentration([curingSalt(grams)], kg(1), nitriteComminuted))).toMatchObject({
    ...{ kind: isWithin ? 'met' : 'missed', finding, weighed: ppm, judged: ppm, [isWithin ? 'spare' : 'by']: by },
  });
});

test('a difference two decimals would hide is shown with as many as it takes', () => {
  const hairOver = judgeConcentration([{ mass: massOf({ value: 25, unit: 'kg' }) + 1n, percent: 6.25 }], kg(10_000), nitriteComminuted);
  expect(plainly(hairOver)).toMatchObject({ kind: 'missed', judged: 'just-above: 156.25 ppm' });
  const littleOver = judgeConcentration([curingSalt(250.001)], kg(100), nitriteComminuted);
  expect(plainly(littleOver)).toMatchObject({ kind: 'missed', judged: '156.251 ppm' });
});

test('too little is undetermined and says how much more to add', () => {
  const verdict = judgeConcentration([curingSalt(18.8)], kg(10), nitriteComminutedRefrigerated);
  expect(plainly(verdict)).toMatchObject({
    ...{ kind: 'undetermined', finding: 'ppm-below', weighed: '117.5 ppm', by: '2.5 ppm', least: '120 ppm' },
    ...{ add: '0.4 g', ingredient: 'ingredient-of: curing salt, 6.25 %' },
  });
});

test('the amount to add is never rounded past the most allowed', () => {
  const small = judgeConcentration([curingSalt(0.19)], massOf({ value: 100, unit: 'g' }), nitriteComminutedRefrigerated);
  expect(plainly(small)).toMatchObject({ kind: 'undetermined', add: '0.01 g' });
});

test('too much says how much, and what meat would do', () => {
  const verdict = judgeConcentration([curingSalt(30)], kg(10), nitriteComminuted);
  expect(plainly(verdict)).toMatchObject({
    ...{ kind: 'missed', finding: 'ppm-above', weighed: '187.5 ppm', by: '31.25 ppm', most: '156.25 ppm' },
    ...{ tooMuch: '5 g', ingredient: 'ingredient-of: curing salt, 6.25 %', meat: 'in-both: 2 kg, 4.41 lb' },
  });
});

test('a content that the name says already is not said twice', () => {
  const named = { ...curingSalt(30), name: 'Curing salt 6.25 %' };
  expect(plainly(judgeConcentration([named], kg(10), nitriteComminuted))).toMatchObject({ ingredient: 'Curing salt 6.25 %' });
});

test.each([
  ['on the exact maximum', 0.875, 'met'],
  ['a thousandth of an ounce over', 0.876, 'missed'],
])('erythorbate %s, which hundredths of a ppm cannot hold', (_case, ounces, kind) => {
  const portion = { mass: massOf({ value: ounces, unit: 'oz' }), percent: 100 };
  expect(judgeConcentration([portion], massOf({ value: 100, unit: 'lb' }), erythorbateComminuted).kind).toBe(kind);
});

test('several portions of different strength add up exactly', () => {
  const portions = [curingSalt(10), curingSalt(10), { mass: g(5), percent: 6.25, name: 'curing salt' }];
  expect(plainly(judgeConcentration(portions, kg(10), nitriteComminuted))).toMatchObject({ kind: 'met', judged: '156.25 ppm' });
  expect(judgeConcentration([...portions, curingSalt(0.001, 0.0001)], kg(10), nitriteComminuted).kind).toBe('missed');
});

test.each([
  ['no meat weighed', [curingSalt(25)], 0n, 'meat-not-weighed'],
  ['nothing weighed', [], kg(10), 'nothing-weighed'],
  ['a content above 100 %', [curingSalt(25, 101)], kg(10), 'portion-unusable'],
  ['a content that is no number', [curingSalt(25, NaN)], kg(10), 'portion-unusable'],
  ['a content that is no number, of what has no name', [{ mass: g(1), percent: NaN }], kg(10), 'portion-unusable'],
  ['a content of five decimals', [curingSalt(25, 6.25001)], kg(10), 'portion-unusable'],
  ['a weight below zero', [{ mass: -1n, percent: 6.25 }], kg(10), 'portion-unusable'],
])('%s is undetermined', (_case, portions, meat, finding) => {
  expect(judgeConcentration(portions, meat, nitriteComminuted)).toMatchObject({ kind: 'undetermined', finding });
});

test('a limit without a usable figure is undetermined', () => {
  expect(judgeConcentration([curingSalt(1)], kg(10), { ...nitriteComminuted, max: undefined }).kind).toBe('undetermined');
  expect(judgeConcentration([curingSalt(1)], kg(10), { ...nitriteComminuted, max: NaN }).kind).toBe('undetermined');
});

test('the dose that reaches the least and the dose that stays within the most', () => {
  const dose = doseFor(nitriteComminutedRefrigerated, kg(10), 6.25);
  expect(dose?.least).toBe(g(19.2));
  expect(dose?.most).toBe(g(25));
  expect(formatMass(doseFor(nitriteComminuted, kg(10), 5.88)?.most ?? 0n, 'g', 2, 'down')).toBe('26.57 g');
  expect(doseFor(nitriteComminuted, kg(10), 0)).toBeUndefined();
});

test('the most of a dose is met and a femtogram more is missed, for any meat and strength', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), fc.integer({ min: 1, max: 1_000_000 }), (grams, parts) => {
      const meat = g(grams);
      const percent = parts / 10_000;
      const most = doseFor(nitriteComminuted, meat, percent)?.most ?? 0n;
      expect(judgeConcentration([{ mass: most, percent }], meat, nitriteComminuted).kind).toBe('met');
      expect(judgeConcentration([{ mass: most + 1n, percent }], meat, nitriteComminuted).kind).toBe('missed');
    }),
  );
});

/** 80 mg/kg of the ion are 80 × 68.99526928 ÷ 46.0055 = 119.977… mg/kg of sodium nitrite. */
const asIon = { ...nitriteComminuted, max: 8000, countedAs: 'NO₂' as const, printed: '80 mg/kg as NO₂ ion' };
test.each([
  ['19.196 g of 6.25 % on 10 kg', 19.196, 'met', 'counted-as: 79.998 ppm, NO₂'],
  ['19.197 g', 19.197, 'missed', 'counted-as: 80.003 ppm, NO₂'],
  ['20 g', 20, 'missed', 'counted-as: 83.35 ppm, NO₂'],
])('counted as the ion: %s', (_case, grams, kind, judged) => {
  expect(plainly(judgeConcentration([curingSalt(grams)], kg(10), asIon))).toMatchObject({ kind, judged });
});

test('the dose counts the ion too, and what is too much is said in curing salt and meat', () => {
  expect(formatMass(doseFor(asIon, kg(10), 6.25)?.most ?? 0n, 'g', 4, 'down')).toBe('19.1963 g');
  expect(plainly(judgeConcentration([curingSalt(20)], kg(10), asIon))).toMatchObject({ tooMuch: '0.81 g', meat: '418.7 g' });
  const hair = { mass: g(20), percent: 6.25, name: '' };
  const justOver = judgeConcentration([{ ...hair, mass: (doseFor(asIon, kg(10), 6.25)?.most ?? 0n) + 1n }], kg(10), asIon);
  expect(plainly(justOver)).toMatchObject({ judged: 'just-above-as: 80 ppm, NO₂', ingredient: 'an-ingredient: 6.25 %' });
});

test('an ion the substance does not hold cannot be counted', () => {
  const wrong = { ...asIon, countedAs: 'NO₃' as const };
  expect(judgeConcentration([curingSalt(1)], kg(10), wrong).kind).toBe('undetermined');
  expect(doseFor(wrong, kg(10), 6.25)).toBeUndefined();
});

test.each([
  ['meat below nothing', -1n, 6.25],
  ['a content that is no number', 1n, NaN],
  ['an endless content', 1n, Infinity],
  ['a content above all of it', 1n, 100.01],
])('%s: no dose, and never met', (_case, meat, percent) => {
  expect(doseFor(nitriteComminuted, meat, percent)).toBeUndefined();
  expect(judgeConcentration([{ mass: g(1), percent }], meat, nitriteComminuted).kind).toBe('undetermined');
});

test('a limit with a least alone is met from there on, with what is to spare above it', () => {
  const least: ConcentrationLimit = { ...nitriteComminutedRefrigerated, max: undefined, printed: '120 ppm' };
  expect(plainly(judgeConcentration([curingSalt(2)], kg(1), least))).toMatchObject({ kind: 'met', spare: '5 ppm' });
  expect(plainly(judgeConcentration([curingSalt(1.9)], kg(1), least))).toMatchObject({ kind: 'undetermined', add: '0.1 g' });
});

test('where no step of a scale lies between the least and the most, what is missing is said to the nanogram', () => {
  const one: ConcentrationLimit = { ...nitriteComminutedRefrigerated, min: 12_000, max: 12_000, printed: '120 ppm' };
  expect(plainly(judgeConcentration([curingSalt(1.9)], g(1000.1), one))).toMatchObject({ kind: 'undetermined', add: '0.020192 g' });
});

test('too little from an ingredient that holds none asks for one that does', () => {
  const judged = plainly(judgeConcentration([curingSalt(20, 0)], kg(10), nitriteComminutedRefrigerated));
  expect(judged).toMatchObject({ kind: 'undetermined', finding: 'ppm-below', weighed: '0 ppm' });
  expect(judged).not.toHaveProperty('add');
});

test('too much says nothing of the last ingredient when that one holds none', () => {
  const judged = plainly(judgeConcentration([curingSalt(2.6), curingSalt(5, 0)], kg(1), nitriteComminuted));
  expect(judged).toMatchObject({ kind: 'missed', meat: '40 g' });
  expect(judged).not.toHaveProperty('tooMuch');
});

test('where none is allowed, no meat brings it back', () => {
  const none: ConcentrationLimit = { ...nitriteComminuted, max: 0, maxThousandths: undefined, printed: 'none' };
  const judged = plainly(judgeConcentration([curingSalt(1)], kg(1), none));
  expect(judged).toMatchObject({ kind: 'missed', tooMuch: '1 g' });
  expect(judged).not.toHaveProperty('meat');
  expect(judgeConcentration([curingSalt(1, 0)], kg(1), none).kind).toBe('met');
});

test('nitrate is counted as its ion where the limit counts that', () => {
  const { source } = nitriteComminuted;
  const shared = { kind: 'concentration', substance: 'sodium nitrate', countedAs: 'NO₃', printed: 'an example' } as const;
  const ion: ConcentrationLimit = { ...shared, max: 7295, source };
  // NO₃ ÷ NaNO₃ = 62.0049 ÷ 84.99466928 by standard atomic weights: 100 ppm of the salt are 72.95 ppm of the ion.
  expect(plainly(judgeConcentration([{ mass: g(1), percent: 10 }], kg(1), ion))).toMatchObject({
    ...{ kind: 'missed', judged: 'counted-as: 72.952 ppm, NO₃' },
  });
  expect(judgeConcentration([{ mass: g(0.99), percent: 10 }], kg(1), ion).kind).toBe('met');
});

describe('scales that may be wrong', () => {
  const wrongBy = (grams: number, error: number) => ({ ...curingSalt(grams), error: g(error) });

  // 11 g × 6.25 % ÷ 4600 g is 149.46 ppm, 12 g × 6.25 % ÷ 4600 g is 163.04 ppm.
  test('11.5 g on 4.6 kg, read to half a gram, spans 149 to 163 ppm and is not met by 156', () => {
    expect(judgeConcentration([curingSalt(11.5)], kg(4.6), nitriteComminuted).kind).toBe('met');
    const judged = judgeConcentration([wrongBy(11.5, 0.5)], kg(4.6), nitriteComminuted);
    expect(judged.notes).toEqual([{ code: 'worse-within-scales' }]);
    expect(plainly(judged)).toMatchObject({
      ...{ kind: 'missed', weighed: '156.25 ppm', leastIn: '149.46 ppm', mostIn: '163.04 ppm', judged: '163.04 ppm', by: '6.8 ppm' },
    });
  });

  test('the meat’s own scale counts too', () => {
    expect(judgeConcentration([curingSalt(11.4)], kg(4.6), nitriteComminuted, g(40)).kind).toBe('met');
    expect(judgeConcentration([curingSalt(11.4)], kg(4.6), nitriteComminuted, g(41)).kind).toBe('missed');
    expect(judgeConcentration([curingSalt(11.4)], g(40), nitriteComminuted, g(40))).toMatchObject({
      kind: 'undetermined',
      finding: 'meat-within-error',
    });
  });

  test('where rework is a part of it, the most and the least of all that is in are judged', () => {
    const between = { ...nitriteComminuted, min: 12_000 };
    const doubt = { most: { substance: g(0.7), base: kg(4.5) }, least: { substance: g(0.6), base: kg(4.7) } };
    const judged = judgeConcentration([curingSalt(11)], kg(4.6), between, doubt);
    expect(plainly(judged)).toMatchObject({ kind: 'met', weighed: '149.46 ppm', leastIn: '127.66 ppm', mostIn: '155.56 ppm' });
    const more = { ...doubt, most: { substance: g(0.71), base: kg(4.5) } };
    expect(judgeConcentration([curingSalt(11)], kg(4.6), between, more).kind).toBe('missed');
    const less = { ...doubt, least: { substance: g(0.5), base: kg(4.7) } };
    expect(judgeConcentration([curingSalt(11)], kg(4.6), between, less).kind).toBe('undetermined');
  });

  test('within both bounds it is met; below the least it is open', () => {
    const between = { ...nitriteComminuted, min: 12_000, max: 20_000, maxThousandths: undefined };
    const judged = (grams: number) => plainly(judgeConcentration([wrongBy(grams, 0.5)], kg(4.6), between));
    expect(judged(9.5)).toMatchObject({ kind: 'met', spare: '64.13 ppm' });
    expect(judged(14)).toMatchObject({ kind: 'met', spare: '2.98 ppm' });
    expect(judged(9)).toMatchObject({ kind: 'undetermined', by: '4.52 ppm' });
    expect(judged(0.4).kind).toBe('undetermined');
    const least = { ...between, max: undefined };
    expect(plainly(judgeConcentration([wrongBy(9.5, 0.5)], kg(4.6), least))).toMatchObject({ kind: 'met', spare: '2.28 ppm' });
  });

  // 4.3 g × 6.25 % ÷ 2 kg is 134.38 ppm; each weighing is ± 0.5 g, so that one more may pass 156.25 ppm.
  test('a scale too coarse for one more weighing is told to weigh nothing more', () => {
    const judged = plainly(judgeConcentration([wrongBy(4.3, 0.5)], kg(2), nitriteComminutedRefrigerated));
    expect(judged).toMatchObject({ kind: 'undetermined', finding: 'ppm-below-on-a-coarse-scale', leastIn: '118.75 ppm' });
    expect(judged).not.toHaveProperty('add');
  });

  test('where rework is a part of it, one more weighing is wrong by the error of its scale', () => {
    const doubt = { most: { substance: g(1.4), base: kg(10) }, least: { substance: g(1.1), base: kg(10) } };
    const judged = (error: number) =>
      (plainly(judgeConcentration([wrongBy(20, error)], kg(10), nitriteComminutedRefrigerated, doubt)) as Plainly).add;
    expect(judged(0)).toBe('1.6 g');
    expect(judged(0.5)).toBe('2.1 g');
    expect(judged(0.6)).toBeUndefined();
  });

  test('what it tells to weigh in besides makes it met, however wrong the scale is that often', () => {
    const figure = fc.integer({ min: 1, max: 60_000 });
    const error = fc.integer({ min: 0, max: 2000 });
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 20_000 }), figure, error, fc.integer({ min: 0, max: 3000 }), (meat, cure, off, more) => {
        const limit = { ...nitriteComminutedRefrigerated, max: 12_000 + more, maxThousandths: undefined };
        const portion = wrongBy(cure / 1000, off / 1000);
        const { add } = judgeConcentration([portion], g(meat), limit).figures;
        if (add === undefined) return;
        const further = { ...portion, mass: massFromGrams((add as Quantity).value) };
        expect(judgeConcentration([portion, further], g(meat), limit).kind).toBe('met');
      }),
    );
  });

  test('a larger error never turns what is not met into met, and a dose allowing for it is met', () => {
    const tenths = fc.integer({ min: 0, max: 300 }).map((n) => n / 10);
    const between: ConcentrationLimit = { ...nitriteComminuted, min: 12_000 };
    fc.assert(
      fc.property(tenths, tenths, tenths, tenths, (grams, error, more, meatError) => {
        const judged = (by: number, meatBy: number) =>
          judgeConcentration([{ ...curingSalt(grams), error: g(by) }], kg(4.6), between, g(meatBy)).kind;
        const wider = Number((error + more).toFixed(1));
        if (judged(wider, meatError) === 'met') expect(judged(error, 0)).toBe('met');
        const dose = doseFor(between, kg(4.6), 6.25, { ingredient: g(error), meat: g(meatError) });
        for (const mass of [dose?.least, dose?.most]) {
          if (mass === undefined || mass < (dose?.least ?? 0n) || mass > (dose?.most ?? 0n)) continue;
          const portion = { mass, percent: 6.25, error: g(error) };
          expect(judgeConcentration([portion], kg(4.6), between, g(meatError)).kind).toBe('met');
        }
      }),
    );
  });
});

test.each<[string, Partial<ConcentrationLimit>]>([
  ['no bound', { max: undefined, maxThousandths: undefined }],
  ['a bound that is no whole number', { max: 156.25 }],
  ['a bound below zero', { max: -1 }],
  ['an ion that its substance does not hold', { substance: 'sodium erythorbate', countedAs: 'NO₂' }],
])('a limit with %s judges nothing', (_case, wrong) => {
  const judged = judgeConcentration([curingSalt(2.5)], kg(1), { ...nitriteComminuted, ...wrong } as ConcentrationLimit);
  expect(judged).toMatchObject({ kind: 'undetermined', finding: 'limit-without-figure' });
});
