import { expect, test } from 'vitest';
import { formatDuration } from './format-duration.test-data';

test.each([
  [5_400_000, '1 h 30 min'],
  [270_000, '4 min 30 s'],
  [16_900, '16.9 s'],
  [0, '0 s'],
  [21_660_000, '6 h 1 min'],
  [3_601_000, '1 h 1 s'],
  [-60_000, '1 min'],
])('%s ms is said as %s', (milliseconds, words) => {
  expect(formatDuration(milliseconds)).toBe(words);
});
