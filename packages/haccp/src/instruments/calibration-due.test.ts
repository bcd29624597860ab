import { expect, test } from 'vitest';
import { calibrationDue } from './calibration-due';

const DAY = 86_400_000;

test.each([
  ['a day before', 6 * DAY, false],
  ['at the very instant', 7 * DAY, false],
  ['a millisecond after', 7 * DAY + 1, true],
  ['three days after', 10 * DAY, true],
])('a weekly check seen %s', (_case, now, isOverdue) => {
  expect(calibrationDue(0, 7, now)).toEqual({ isOverdue, dueAt: 7 * DAY });
});

test('an instrument never checked, checked in the future, or without an interval is overdue', () => {
  expect(calibrationDue(undefined, 7, 0)).toEqual({ isOverdue: true });
  expect(calibrationDue(NaN, 7, 0).isOverdue).toBe(true);
  expect(calibrationDue(DAY, 7, 0)).toEqual({ isOverdue: true, dueAt: 8 * DAY });
  expect(calibrationDue(0, 0, DAY)).toEqual({ isOverdue: true });
  expect(calibrationDue(0, 7, NaN)).toEqual({ isOverdue: true });
});
