import { expect, test } from 'vitest';
import { instantsAt, wallTime } from './wall-time';

const chicago = 'America/Chicago';

test.each([
  ['in winter', '2026-01-15T20:05:00Z', '2026-01-15T14:05'],
  ['in summer', '2026-07-15T20:05:00Z', '2026-07-15T15:05'],
  ['past midnight', '2026-01-15T04:00:00-01:00', '2026-01-14T23:00'],
])('the wall clock %s', (_case, instant, wall) => {
  expect(wallTime(instant, chicago)).toBe(wall);
});

test.each([
  ['an ordinary afternoon', '2026-01-15T14:05', chicago, ['2026-01-15T14:05:00-06:00']],
  ['the hour that clocks skip in spring', '2026-03-08T02:30', chicago, []],
  ['the minute the skip ends', '2026-03-08T03:00', chicago, ['2026-03-08T03:00:00-05:00']],
  ['the hour that comes twice in autumn', '2026-11-01T01:30', chicago, ['2026-11-01T01:30:00-05:00', '2026-11-01T01:30:00-06:00']],
  ['a zone with a half-hour offset', '2026-05-01T09:00', 'Asia/Kolkata', ['2026-05-01T09:00:00+05:30']],
  ['half-typed', '2026-05-', chicago, []],
])('%s', (_case, wall, zone, instants) => {
  expect(instantsAt(wall, zone)).toEqual(instants);
});

test('there and back, every half hour through both clock changes of a year', () => {
  for (const from of ['2026-03-07T00:00:00Z', '2026-10-31T00:00:00Z']) {
    for (let i = 0; i < 120; i++) {
      const at = Date.parse(from) + i * 1_800_000;
      expect(instantsAt(wallTime(at, chicago), chicago).map((instant) => Date.parse(instant))).toContain(at);
    }
  }
});
