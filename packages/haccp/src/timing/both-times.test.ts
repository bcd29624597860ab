import { expect, test } from 'vitest';
import { isTwoTimes } from './both-times';

const at = Date.parse('2026-03-02T09:00:00Z');

test.each([
  ['entered as it happened', 0, false],
  ['entered a minute later', 60_000, false],
  ['entered more than a minute later', 60_001, true],
  ['said by a clock a minute ahead', -60_000, false],
  ['said by a clock more than a minute ahead', -60_001, true],
])('what is %s has two times: %#', (_case, later, isTwo) => {
  expect(isTwoTimes({ at, enteredAt: at + later })).toBe(isTwo);
});
