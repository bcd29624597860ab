import { expect, test } from 'vitest';
import { scale, timeTicks, valueTicks } from './curve-scale';

test('a temperature axis is ruled at round values that cover the curve', () => {
  expect(valueTicks([38, 151.5], 6)).toEqual([20, 40, 60, 80, 100, 120, 140, 160]);
  expect(valueTicks([-18.4, 3], 5)).toEqual([-20, -15, -10, -5, 0, 5]);
});

test('one value alone still gets an axis', () => {
  const ticks = valueTicks([70, 70], 5);
  expect(ticks[0]).toBeLessThanOrEqual(70);
  expect(ticks.at(-1)).toBeGreaterThanOrEqual(70);
});

test('a time axis is ruled at round times of the wall clock, in a half-hour zone too', () => {
  const from = Date.parse('2026-05-01T09:07:00+05:30');
  const ticks = timeTicks([from, from + 6 * 3_600_000], 6, 'Asia/Kolkata');
  expect(ticks.map((at) => new Date(at).toISOString())).toEqual([
    '2026-05-01T04:30:00.000Z',
    '2026-05-01T05:30:00.000Z',
    '2026-05-01T06:30:00.000Z',
    '2026-05-01T07:30:00.000Z',
    '2026-05-01T08:30:00.000Z',
    '2026-05-01T09:30:00.000Z',
  ]);
});

test('a scale maps ends to ends, and a span of nothing to its start', () => {
  const across = scale([0, 100], [10, 210]);
  expect([across(0), across(50), across(100)]).toEqual([10, 110, 210]);
  expect(scale([5, 5], [10, 210])(5)).toBe(10);
});
