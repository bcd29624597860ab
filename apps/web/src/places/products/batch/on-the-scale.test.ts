import { expect, test } from 'vitest';
import { gramsFigure, onTheScale, ppmOf, type Dose } from './on-the-scale';

// 25 kg of chopped meat, 0.24 % of a 6.25 % curing salt; at most 156.25 ppm (9 CFR 424.21(c)), which is 62.5 g.
const cure: Dose = { grams: 60, ppm: 150, maxGrams: 62.5 };
const formatGrams = (mass: bigint) => `${gramsFigure(mass).value} g`;
const said = ({ reading, really, sure }: ReturnType<typeof onTheScale>) => ({
  reading: formatGrams(reading),
  really: `${formatGrams(really.least)} to ${formatGrams(really.most)}`,
  sure: sure && `${formatGrams(sure.from)} to ${formatGrams(sure.to)}`,
});

test.each([
  [0.1, { reading: '60 g', really: '59.95 g to 60.05 g', sure: '0.1 g to 62.4 g' }],
  [1, { reading: '60 g', really: '59.5 g to 60.5 g', sure: '1 g to 62 g' }],
  [5, { reading: '60 g', really: '57.5 g to 62.5 g', sure: '5 g to 60 g' }],
  [50, { reading: '50 g', really: '25 g to 75 g', sure: undefined }],
])('on a scale that shows %f g', (value, expected) => {
  expect(said(onTheScale(cure, { value, unit: 'g' }))).toEqual(expected);
});

test('with a least, both ends are kept', () => {
  expect(said(onTheScale({ ...cure, minGrams: 48 }, { value: 5, unit: 'g' })).sure).toBe('55 g to 60 g');
  expect(said(onTheScale({ ...cure, minGrams: 59 }, { value: 5, unit: 'g' })).sure).toBeUndefined();
});

test('a scale in ounces is reckoned exactly: half of 0.1 oz is 1.4174761… g', () => {
  expect(said(onTheScale(cure, { value: 0.1, unit: 'oz' })).really).toBe('58.117 g to 60.951 g');
});

test('the ppm of what may really lie on the scale is never said too small', () => {
  const { really } = onTheScale(cure, { value: 50, unit: 'g' });
  expect(ppmOf(really.most, cure)).toBe(187.5);
  expect(ppmOf(really.least, cure)).toBe(62.5);
});
