import { expect, test } from 'vitest';
import { WallClock } from './wall-clock';

const american = new WallClock('America/Chicago', 'US');
const international = new WallClock('Europe/Paris', 'international');
const afternoon = Date.UTC(2025, 8, 4, 19, 5);

test('an American shop reads its own zone, month first', () => {
  expect(american.dayAndTime(afternoon)).toBe('Sep 4, 2025, 2:05 pm');
  expect(american.withZone(afternoon)).toBe('Sep 4, 2025, 2:05 pm CDT');
});

test('elsewhere the day comes first and hours go to 24', () => {
  expect(international.dayAndTime(afternoon)).toBe('4 Sep 2025, 21:05');
  expect(international.time(Date.UTC(2025, 8, 3, 22, 0))).toBe('00:00');
});

test('when clocks are set back, the hour that comes twice is told apart by its zone', () => {
  const [first, second] = [Date.UTC(2025, 10, 2, 6, 30), Date.UTC(2025, 10, 2, 7, 30)];
  expect(american.time(first)).toBe('1:30 am CDT');
  expect(american.time(second)).toBe('1:30 am CST');
});

test('on other days the zone is not repeated', () => {
  expect(american.time(Date.UTC(2025, 10, 5, 7, 30))).toBe('1:30 am');
});

test('a day begins at midnight of the shop, not of the world', () => {
  expect(american.sameDay(Date.UTC(2025, 8, 5, 4, 59), afternoon)).toBe(true);
  expect(american.sameDay(Date.UTC(2025, 8, 5, 5, 1), afternoon)).toBe(false);
});

test('minutes are counted from midnight', () => {
  expect(american.minuteOfDay(afternoon)).toBe(14 * 60 + 5);
  expect(international.minuteOfDay(afternoon)).toBe(21 * 60 + 5);
});

test('a zone that is none is refused', () => {
  expect(() => new WallClock('Mars/Olympus', 'US')).toThrow(RangeError);
});
