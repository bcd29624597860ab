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
