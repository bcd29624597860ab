import { expect, test } from 'vitest';
import { sayAllowed, sayOwn, sayToWeigh } from './say-amounts';

test.each([
  [60, 'lb', '60 g'],
  [480.81, 'lb', '480.8 g = 1 lb 0.96 oz'],
  [11_339.81, 'lb', '11340 g = 25 lb'],
  [999.95, 'kg', '1000 g'],
  [2500, 'kg', '2500 g = 2.5 kg'],
] as const)('%f g in a shop of %s is weighed as %s', (grams, heavy, said) => {
  expect(sayToWeigh(grams, heavy)).toBe(said);
});

test('what is allowed is rounded inward, and stands empty where nothing is set', () => {
  expect(sayAllowed(43.5449, 'up')).toBe('43.6 g');
  expect(sayAllowed(56.6999, 'down')).toBe('56.6 g');
  expect(sayAllowed(undefined, 'up')).toBe('');
});

test('what is restricted is read towards the inside of its limit', () => {
  expect(sayToWeigh(11.46, 'kg', 'down')).toBe('11.4 g');
  expect(sayToWeigh(1134.47, 'lb', 'down')).toBe('1134.4 g = 2 lb 8.01 oz');
});

test('a weight in the shop’s own unit', () => {
  expect(sayOwn(22_679.6, 'lb', 'oz')).toBe('50 lb');
  expect(sayOwn(100, 'lb', 'oz')).toBe('3.53 oz');
  expect(sayOwn(100, 'kg', 'g')).toBe('100 g');
});
