import { expect, test } from 'vitest';
import { calibrationDue } from './calibration-due';

const DAY = 86_400_000;

test.each([
  ['a day before', 6 * DAY, false, 'due in 1 day'],
  ['at the very instant', 7 * DAY, false, 'due in less than 1 min'],
  ['an hour and a half before', 7 * DAY - 5_400_000, false, 'due in 1 h 30 min'],
  ['a millisecond after', 7 * DAY + 1, true, 'overdue by less than 1 min'],
  ['three days after', 10 * DAY, true, 'overdue by 3 days'],
])('a weekly check seen %s', (_case, now, isOverdue, says) => {
  expect(calibrationDue(0, 7, now)).toEqual({ isOverdue, dueAt: 7 * DAY, says });
});

test('an instrument never checked, checked in the future, or without an interval is overdue', () => {
  expect(calibrationDue(undefined, 7, 0)).toEqual({ isOverdue: true, says: 'never calibrated' });
  expect(calibrationDue(NaN, 7, 0).isOverdue).toBe(true);
  expect(calibrationDue(DAY, 7, 0).says).toBe('calibrated at a time still to come: check the clock');
  expect(calibrationDue(0, 0, DAY)).toEqual({ isOverdue: true, says: 'no usable interval' });
});
