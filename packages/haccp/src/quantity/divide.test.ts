import { expect, test } from 'vitest';
import { divide } from './divide';

test.each([
  [7n, 2n, 4n, 4n, 3n],
  [-7n, 2n, -4n, -3n, -4n],
  [6n, 3n, 2n, 2n, 2n],
  [1n, 3n, 0n, 1n, 0n],
  [-1n, 3n, 0n, 0n, -1n],
  [7n, -2n, -4n, -3n, -4n],
])('%s ÷ %s rounds once', (numerator, denominator, nearest, up, down) => {
  expect(divide(numerator, denominator, 'nearest')).toBe(nearest);
  expect(divide(numerator, denominator, 'up')).toBe(up);
  expect(divide(numerator, denominator, 'down')).toBe(down);
});
