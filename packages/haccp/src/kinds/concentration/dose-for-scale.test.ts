import { describe, expect, test } from 'vitest';
import { nitriteComminuted, nitriteComminutedRefrigerated } from '../../limit-sets/curing';
import { massOf, formatMass } from '../../quantity/weigh';
import { plainPart } from '../../limits/plain-part.test-data';
import { doseFor } from './dose-for';
import { doseOnScale } from './dose-for-scale';

const g = (value: number) => massOf({ value, unit: 'g' });
const kilo = massOf({ value: 1, unit: 'kg' });
const forOneKilo = doseFor(nitriteComminuted, kilo, 6.25) ?? {};
const betweenBounds = doseFor(nitriteComminutedRefrigerated, kilo, 6.25) ?? {};

test('a limit with a least alone takes any weight that is surely above it', () => {
  const dose = doseFor({ ...nitriteComminutedRefrigerated, max: undefined }, kilo, 6.25) ?? {};
  expect(dose.most).toBeUndefined();
  const { shows } = doseOnScale(dose, { step: g(0.1) });
  expect(formatMass(shows?.from ?? 0n, 'g')).toBe('2 g');
});

describe('2.5 g of 6.25 % curing salt for one kilo', () => {
  test.each([
    ['steps of 1 g: a fifth of it is doubt', g(1), false, '2 g'],
    ['steps of 0.5 g: a tenth', g(0.5), false, '2 g'],
    ['steps of 0.25 g: exactly a twentieth', g(0.25), true, '2.25 g'],
    ['steps of 0.26 g: just more than a twentieth', g(0.26), false, '2.34 g'],
    ['steps of 0.1 g', g(0.1), true, '2.4 g'],
    ['steps of 0.01 g', g(0.01), true, '2.49 g'],
  ])('%s', (_case, step, isFineEnough, most) => {
    const onScale = doseOnScale(forOneKilo, { step });
    expect(onScale.isFineEnough).toBe(isFineEnough);
    expect(formatMass(onScale.shows?.to ?? 0n, 'g')).toBe(most);
  });

  test('what a coarse scale would hide is said with its figures', () => {
    expect(plainPart(doseOnScale(forOneKilo, { step: g(1) }).because)).toBe('too-coarse 0.5 g 2.5 g 20 % 5 %');
  });

  test('between a least and a most, 1.92 to 2.5 g, a step of 1 g shows nothing that is surely within', () => {
    const onScale = doseOnScale(betweenBounds, { step: g(1) });
    expect([onScale.isFineEnough, onScale.shows]).toEqual([false, undefined]);
    expect(doseOnScale(betweenBounds, { step: g(0.1) }).shows).toEqual({ from: g(2), to: g(2.4) });
  });

  test('the scale’s own error comes on top of half a step', () => {
    expect(doseOnScale(forOneKilo, { step: g(0.1), error: g(0.1) })).toMatchObject({
      isFineEnough: false,
      doubt: g(0.15),
    });
  });
});

test.each([
  ['no step', forOneKilo, { step: 0n }, 5],
  ['a step below nothing', forOneKilo, { step: -g(1) }, 5],
  ['an error below nothing', forOneKilo, { step: g(1), error: -g(1) }, 5],
  ['no tolerance', forOneKilo, { step: g(0.01) }, NaN],
  ['an endless tolerance', forOneKilo, { step: g(0.01) }, Infinity],
  ['no dose', {}, { step: g(0.01) }, 5],
  ['no room for a dose', { most: 0n }, { step: g(0.01) }, 5],
])('%s is never fine enough', (_case, dose, scale, within) => {
  const { isFineEnough, shows } = doseOnScale(dose, scale, within);
  expect([isFineEnough, shows]).toEqual([false, undefined]);
});
