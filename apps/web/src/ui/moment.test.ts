import { expect, test } from 'vitest';
import { whenWords } from './moment';

const zone = 'America/Chicago';
const now = Date.parse('2026-03-05T22:00:00-06:00');

test.each([
  ['later the same evening', '2026-03-05T23:59:00-06:00', '23:59'],
  ['after midnight it is another day', '2026-03-06T00:14:00-06:00', 'Fri 6 Mar 2026, 00:14'],
  ['by the shop’s calendar, not by that of the instant', '2026-03-05T05:30:00Z', 'Wed 4 Mar 2026, 23:30'],
])('%s', (_case, at, words) => {
  expect(whenWords(at, now, zone)).toBe(words);
});
