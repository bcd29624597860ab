import { expect, test } from 'vitest';
import { formatRead } from './format-read';

test.each([
  [{ value: 36.4, unit: '°F' }, '36.4 °F'],
  [{ value: '642.50', unit: 'g' }, '642.50 g'],
  [{ value: 5.21, unit: 'pH' }, 'pH 5.21'],
  [{ value: 0.838, unit: 'aw' }, 'aw 0.838'],
  [{ value: 1.72, unit: 'ratio' }, '1.72'],
  [{ value: 'yes', unit: '' }, 'yes'],
])('%o is said as %s', (read, said) => {
  expect(formatRead(read)).toBe(said);
});
