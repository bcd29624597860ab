import { expect, test } from 'vitest';
import { isTwoTimes, sayBothTimes } from './both-times';

const at = Date.parse('2026-03-02T09:00:00Z');
const say = (instant: number): string => new Date(instant).toISOString().slice(11, 16);

test.each([
  ['entered as it happened', 0, false],
  ['entered a minute later', 60_000, false],
  ['entered more than a minute later', 60_001, true],
  ['said by a clock a minute ahead', -60_000, false],
  ['said by a clock more than a minute ahead', -60_001, true],
])('what is %s has two times: %#', (_case, later, isTwo) => {
  expect(isTwoTimes({ at, enteredAt: at + later })).toBe(isTwo);
});

test('two times are both said, one is said once', () => {
  expect(sayBothTimes({ at, enteredAt: at + 2 * 3_600_000 }, say)).toBe('09:00, entered 11:00');
  expect(sayBothTimes({ at, enteredAt: at + 30_000 }, say)).toBe('09:00');
});
