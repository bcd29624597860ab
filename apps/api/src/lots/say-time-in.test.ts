import { expect, test } from 'vitest';
import { sayTimeIn } from './say-time-in';

const morning = new Date('2026-10-14T03:50:00Z');
const noon = new Date('2026-10-14T10:05:00Z');
const nextDay = new Date('2026-10-14T22:30:00Z');

test('within one day of the shop the hour is enough', () => {
  expect(sayTimeIn('Europe/Vienna', [morning, noon])(noon.getTime())).toBe('12:05');
  expect(sayTimeIn('UTC', [morning, nextDay])(nextDay.getTime())).toBe('22:30');
});

test('over several days of the shop each instant has its day', () => {
  const say = sayTimeIn('Europe/Vienna', [morning, nextDay]);
  expect(say(morning.getTime())).toBe('Wed 14 Oct, 05:50');
  expect(say(nextDay.getTime())).toBe('Thu 15 Oct, 00:30');
});

test('across a change of the clocks each time carries its zone', () => {
  const before = new Date('2026-11-01T06:30:00Z');
  const after = new Date('2026-11-01T07:10:00Z');
  const say = sayTimeIn('America/Chicago', [before, after]);
  expect(say(before.getTime())).toBe('01:30 CDT');
  expect(say(after.getTime())).toBe('01:10 CST');
  expect(sayTimeIn('America/Chicago', [after])(after.getTime())).toBe('01:10');
});

test('in spring, over several days, and in a zone that Europe names', () => {
  const [before, after] = [new Date('2026-03-28T20:00:00Z'), new Date('2026-03-29T05:00:00Z')];
  const say = sayTimeIn('Europe/London', [before, after]);
  expect(say(before.getTime())).toMatch(/^Sat 28 Mar, 20:00 (GMT|GMT\+0)$/);
  expect(say(after.getTime())).toBe('Sun 29 Mar, 06:00 BST');
});
