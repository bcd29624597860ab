import { expect, test } from 'vitest';
import { sayGrams } from './say-grams';

test.each([
  [22_679.6185, 'US', '50 lb'],
  [22_679.6185, 'metric', '22.68 kg'],
  [408.23, 'US', '408.2 g'],
  [-453.59237, 'US', '-1 lb'],
  [0, 'metric', '0 g'],
] as const)('%f g in %s units are said as %s', (grams, units, said) => {
  expect(sayGrams(grams, units)).toBe(said);
});
