import { expect, test } from 'vitest';
import { dayOfYear } from './civil-date';
import { useBy } from './use-by';

test.each([
  ['the same day', '2026-06-01', 0, '2026-06-01'],
  ['over a month', '2026-06-01', 30, '2026-07-01'],
  ['over a leap day', '2028-02-28', 2, '2028-03-01'],
  ['over a new year', '2026-12-31', 1, '2027-01-01'],
])('use by %s', (_case, packedOn, days, date) => {
  expect(useBy(packedOn, days)).toBe(date);
});

test.each([
  ['2026-02-29', 1],
  ['1 June', 1],
  ['2026-06-01', -1],
  ['2026-06-01', 1.5],
  ['2026-06-01', NaN],
])('packed on %s with %s days gives no date', (packedOn, days) => {
  expect(() => useBy(packedOn, days)).toThrow(RangeError);
});

test('the day of the year knows leap years', () => {
  expect(dayOfYear('2026-12-31')).toBe(365);
  expect(dayOfYear('2028-12-31')).toBe(366);
  expect(dayOfYear('2026-13-01')).toBeUndefined();
});
