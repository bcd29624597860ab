import { expect, test } from 'vitest';
import { inEnglish } from './in-english.test-data';
import { timeLeft, writeSeconds, writeTimeLeft } from './time-left';

const noon = Date.parse('2026-03-02T12:00:00Z');

test.each([
  ['an hour and a half before', noon - 90 * 60_000, { seconds: 5400, late: false, words: '1 h 30 min left' }],
  ['half a second before it counts as no second left', noon - 500, { seconds: 0, late: false, words: '0 s left' }],
  ['exactly on the deadline is not late', noon, { seconds: 0, late: false, words: '0 s left' }],
  ['a millisecond after is a second over', noon + 1, { seconds: 1, late: true, words: '1 s over' }],
  ['ten minutes after', noon + 600_000, { seconds: 600, late: true, words: '10 min over' }],
])('time left %s', (_case, now, { words, ...left }) => {
  expect(timeLeft(noon, now)).toEqual(left);
  expect(writeTimeLeft(left, inEnglish('shared'))).toBe(words);
});

test.each([
  [59, '59 s'],
  [60, '1 min'],
  [125, '2 min 5 s'],
  [301, '5 min'],
  [3599, '59 min'],
  [3600, '1 h 00 min'],
  [7500, '2 h 05 min'],
  [93_600, '26 h 00 min'],
])('%i seconds reads "%s"', (seconds, words) => {
  expect(writeSeconds(seconds)).toBe(words);
});
