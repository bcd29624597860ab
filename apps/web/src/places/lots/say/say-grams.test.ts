import { expect, test } from 'vitest';
import { sayGrams, sayLeast, sayMost } from './say-grams';

test.each([
  [22_679.6185, 'US', '50 lb'],
  [22_679.6185, 'metric', '22.68 kg'],
  [408.23, 'US', '408.2 g'],
  [999.99, 'metric', '1000 g'],
  [0, 'metric', '0 g'],
] as const)('%f g in %s units are said as %s', (grams, units, said) => {
  expect(sayGrams(grams, units)).toBe(said);
});

test('the least is never said too small and the most never too large', () => {
  expect(sayLeast(43.5449)).toBe('43.6 g');
  expect(sayMost(56.6999)).toBe('56.6 g');
  expect(sayMost(0.3)).toBe('0.3 g');
});
