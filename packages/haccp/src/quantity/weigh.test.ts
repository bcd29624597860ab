import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { MassUnit } from './mass';
import { gramsText, massFromGrams, massIn, massOf, formatMass } from './weigh';

test.each([
  ['a pound', 1, 'lb', '453.59237'],
  ['an ounce', 1, 'oz', '28.349523125'],
  ['sixteen ounces', 16, 'oz', '453.59237'],
  ['a gram and a half', 1.5, 'g', '1.5'],
  ['ten kilos', 10, 'kg', '10000'],
  ['a thousandth of an ounce', 0.001, 'oz', '0.028349523125'],
  ['nothing', 0, 'lb', '0'],
] as const)('%s is exact in grams', (_case, value, unit, grams) => {
  expect(gramsText(massOf({ value, unit }))).toBe(grams);
});

test('a weight survives the database', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 99_999_999 }), fc.constantFrom<MassUnit>('g', 'kg', 'oz', 'lb'), (count, unit) => {
      const mass = massOf({ value: count / 1000, unit });
      expect(massFromGrams(gramsText(mass))).toBe(mass);
    }),
  );
  expect(massFromGrams('453.592370000000000000')).toBe(massOf({ value: 1, unit: 'lb' }));
  expect(massFromGrams('-0.5')).toBe(-massOf({ value: 0.5, unit: 'g' }));
});

test('a weight is rounded once, for reading only', () => {
  expect(formatMass(massOf({ value: 10, unit: 'kg' }), 'lb')).toBe('22.046 lb');
  expect(formatMass(massOf({ value: 2.5, unit: 'g' }), 'g')).toBe('2.5 g');
  expect(formatMass(massOf({ value: 1, unit: 'oz' }), 'g', 1, 'up')).toBe('28.4 g');
  expect(formatMass(massOf({ value: 1, unit: 'oz' }), 'g', 1, 'down')).toBe('28.3 g');
});

test('a fourth decimal and a text that is no number are refused', () => {
  expect(() => massOf({ value: 1.2345, unit: 'kg' })).toThrow('1.2345 is not a weight');
  expect(() => massFromGrams('12 g')).toThrow('"12 g" is not a decimal number of grams');
  expect(() => massFromGrams('')).toThrow(RangeError);
});

test.each([
  ['pounds from a pound on', 'US', 22_680, { value: '50', unit: 'lb' }],
  ['grams below one', 'US', 453, { value: '453', unit: 'g' }],
  ['kilos from a kilo on', 'metric', 22_680, { value: '22.68', unit: 'kg' }],
  ['grams to a tenth', 'metric', 12.34, { value: '12.3', unit: 'g' }],
  ['the same of another', 'US', 408.23, { value: '408.2', unit: 'g' }],
  ['what is exactly fifty pounds', 'US', 22_679.6185, { value: '50', unit: 'lb' }],
  ['and in kilos', 'metric', 22_679.6185, { value: '22.68', unit: 'kg' }],
  ['a pound that is lacking', 'US', -453.59237, { value: '-1', unit: 'lb' }],
  ['nothing', 'metric', 0, { value: '0', unit: 'g' }],
] as const)('a reckoned weight is told in the unit of a shop: %s', (_case, units, grams, told) => {
  expect(massIn(units, grams)).toEqual(told);
});
