import { expect, test } from 'vitest';
import { enteredMass, isMoreThan, massUnits } from './mass-units';

test.each([
  ['a batch of meat in a US shop', 'US', 36_287, 'lb'],
  ['a dose of cure in a US shop', 'US', 85, 'g'],
  ['a batch of meat in a metric shop', 'metric', 40_000, 'kg'],
  ['a dose of cure in a metric shop', 'metric', 85, 'g'],
] as const)('%s is first asked for in the unit of its scale', (_case, units, most, unit) => {
  expect(massUnits(units, most)[0]).toMatchObject({ unit, least: 0 });
});

test('what is usual is said in three figures', () => {
  expect(massUnits('US', 36_287.39)[0]?.most).toBe(80);
});

test('more than is left is found without rounding', () => {
  expect(isMoreThan(enteredMass(28, 'lb'), 28 * 453.59237)).toBe(false);
  expect(isMoreThan(enteredMass(28.001, 'lb'), 28 * 453.59237)).toBe(true);
});

test('a unit that no scale has is not taken for a weight', () => {
  expect(() => enteredMass(1, 'stone')).toThrow('stone');
});
