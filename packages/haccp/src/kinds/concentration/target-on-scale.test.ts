import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nitriteComminuted, nitriteComminutedRefrigerated } from '../../limit-sets/curing';
import { plainPart } from '../../limits/plain-part.test-data';
import { massOf, formatMass } from '../../quantity/weigh';
import { doseFor } from './dose-for';
import { judgeConcentration } from './judge-concentration';
import { targetOnScale } from './target-on-scale';

const g = (value: number) => massOf({ value, unit: 'g' });
const said = (mass: bigint | undefined) => (mass === undefined ? undefined : formatMass(mass, 'g'));
/** 2.5 g of 6.25 % to the kilogram, which is the most allowed. */
const standard = (meatGrams: number, step: number, error = 0) => {
  const dose = doseFor(nitriteComminuted, g(meatGrams), 6.25, { ingredient: g(error) }) ?? {};
  return targetOnScale(g(meatGrams) / 400n, dose, g(step));
};

test.each([
  ['11.465 g is 11.4 and not 11.5 in steps of 0.1 g', 4586, 0.1, '11.4 g'],
  ['11.435 g is 11.4', 4574, 0.1, '11.4 g'],
  ['11.5 g is on the scale as it is', 4600, 0.1, '11.5 g'],
  ['11.5 g is 11 in steps of 1 g', 4600, 1, '11 g'],
])('%s', (_case, meat, step, target) => {
  const found = standard(meat, step);
  expect(said(found.target)).toBe(target);
  expect(found.because).toBeUndefined();
});

test('a formula that asks for more than is surely within says so, and names the nearest that is', () => {
  const found = standard(4600, 0.1, 0.05);
  expect(said(found.target)).toBe('11.4 g');
  expect(found.because && plainPart(found.because)).toBe('nearest-on-scale 11.5 g 11.4 g');
  const little = targetOnScale(g(1), { least: g(2.05) }, g(0.1));
  expect(said(little.target)).toBe('2.1 g');
});

test('steps too coarse for the dose, and none, weigh nothing', () => {
  expect(standard(100, 1)).toEqual({
    because: { code: 'nothing-on-scale', figures: { step: { value: '1', unit: 'g' } } },
  });
  expect(targetOnScale(g(5), { least: g(5.2), most: g(5.8) }, g(1)).target).toBeUndefined();
  expect(targetOnScale(g(5), {}, 0n)).toEqual({ because: { code: 'scale-step-unusable' } });
  expect(said(targetOnScale(g(5.4), {}, g(1)).target)).toBe('5 g');
});

test('a weighing of exactly the target, on that scale and with its error, is met', () => {
  const limits = fc.constantFrom(nitriteComminuted, nitriteComminutedRefrigerated);
  const tenths = (max: number) => fc.integer({ min: 0, max }).map((n) => n / 10);
  fc.assert(
    fc.property(
      limits,
      fc.integer({ min: 50, max: 60_000 }),
      fc.constantFrom(0.01, 0.1, 1, 5),
      tenths(20),
      tenths(100),
      fc.integer({ min: 0, max: 4000 }),
      fc.constantFrom(0.5, 0.6, 0.8, 1, 5, 6.25, 10, 99.9),
      (limit, meatGrams, step, error, meatError, perMillion, percent) => {
        const within = { ingredient: g(error), meat: g(meatError) };
        const dose = doseFor(limit, g(meatGrams), percent, within) ?? {};
        const { target } = targetOnScale((g(meatGrams) * BigInt(perMillion)) / 1_000_000n, dose, g(step));
        if (target === undefined) return;
        const portion = { mass: target, percent, error: g(error) };
        const { kind } = judgeConcentration([portion], g(meatGrams), limit, g(meatError));
        expect(limit.min === undefined && target <= g(error) ? 'met' : kind).toBe('met');
        expect(target % g(step)).toBe(0n);
      },
    ),
  );
});
