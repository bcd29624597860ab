import { expect, test } from 'vitest';
import { enteredWords, timeWords, whenWords } from './moment';

const zone = 'America/Chicago';
const now = Date.parse('2026-03-05T22:00:00-06:00');

test.each([
  ['later the same evening', '2026-03-05T23:59:00-06:00', '23:59'],
  ['after midnight it is another day', '2026-03-06T00:14:00-06:00', 'Fri 6 Mar 2026, 00:14'],
  ['by the shop’s calendar, not by that of the instant', '2026-03-05T05:30:00Z', 'Wed 4 Mar 2026, 23:30'],
])('%s', (_case, at, words) => {
  expect(whenWords(at, now, zone)).toBe(words);
});

test.each([
  ['the first of two half past ones in autumn', '2026-11-01T01:30:00-05:00', zone, '01:30 CDT'],
  ['the second', '2026-11-01T01:30:00-06:00', zone, '01:30 CST'],
  ['a chill that began the evening before', '2026-10-31T21:00:00-05:00', zone, '21:00 CDT'],
  ['before the hour that spring leaves out', '2026-03-08T01:30:00-06:00', zone, '01:30 CST'],
  ['and after it', '2026-03-08T03:30:00-05:00', zone, '03:30 CDT'],
  ['by the name that people there use', '2026-10-25T01:30:00+00:00', 'Europe/London', '01:30 GMT'],
  ['the day before, at noon', '2026-10-31T12:00:00-05:00', zone, '12:00'],
  ['where clocks never change', '2026-11-01T01:30:00-07:00', 'America/Phoenix', '01:30'],
])('a time names its zone where the clocks change: %s', (_case, at, where, words) => {
  expect(timeWords(at, where)).toBe(words);
});

test('so do the time that something is due, and the time it was entered', () => {
  const evening = Date.parse('2026-10-31T23:30:00-05:00');
  const after = Date.parse('2026-11-01T01:45:00-06:00');
  expect(whenWords(after, evening, zone)).toBe('Sun 1 Nov 2026, 01:45 CST');
  expect(enteredWords({ at: Date.parse('2026-11-01T01:45:00-05:00'), enteredAt: after }, zone)).toBe('entered 01:45 CST');
});
