import { expect, test } from 'vitest';
import { endOfDay, startOfDay } from './start-of-day';

test.each([
  ['in winter', '2026-01-15', 'America/Chicago', '2026-01-15T06:00:00.000Z', '2026-01-16T06:00:00.000Z'],
  ['on the day clocks go forward: 23 hours', '2026-03-08', 'America/Chicago', '2026-03-08T06:00:00.000Z', '2026-03-09T05:00:00.000Z'],
  ['on the day clocks go back: 25 hours', '2026-11-01', 'America/Chicago', '2026-11-01T05:00:00.000Z', '2026-11-02T06:00:00.000Z'],
  ['where clocks go forward at midnight itself', '2026-09-06', 'America/Santiago', '2026-09-06T04:00:00.000Z', '2026-09-07T03:00:00.000Z'],
  ['east of Greenwich by a half hour', '2026-05-01', 'Asia/Kolkata', '2026-04-30T18:30:00.000Z', '2026-05-01T18:30:00.000Z'],
  ['far east', '2026-05-01', 'Pacific/Kiritimati', '2026-04-30T10:00:00.000Z', '2026-05-01T10:00:00.000Z'],
  ['at the end of a year', '2026-12-31', 'UTC', '2026-12-31T00:00:00.000Z', '2027-01-01T00:00:00.000Z'],
])('a day %s', (_case, day, timeZone, starts, ends) => {
  expect(startOfDay(day, timeZone).toISOString()).toBe(starts);
  expect(endOfDay(day, timeZone).toISOString()).toBe(ends);
});
