import { expect, test } from 'vitest';
import { thinCurve } from './thin-curve';

const day = Array.from({ length: 86_400 }, (_none, i) => ({ at: i * 1000, value: 60 + Math.sin(i / 4000) }));

test('a day at one reading a second keeps its ends, its one-second peak and its one-second dip', () => {
  const withSpikes = day.map((point, i) => ({ ...point, value: i === 40_001 ? 99 : i === 70_003 ? 1 : point.value }));
  const thin = thinCurve(withSpikes, 400);
  expect(thin.length).toBeLessThanOrEqual(1600);
  expect(thin.at(0)).toEqual(withSpikes.at(0));
  expect(thin.at(-1)).toEqual(withSpikes.at(-1));
  expect(Math.max(...thin.map((point) => point.value))).toBe(99);
  expect(Math.min(...thin.map((point) => point.value))).toBe(1);
  expect(thin).toEqual([...thin].sort((a, b) => a.at - b.at));
});

test('a hand-read curve is drawn as it was read', () => {
  expect(thinCurve(day.slice(0, 12), 400)).toEqual(day.slice(0, 12));
});

test('no reading, no curve', () => {
  expect(thinCurve([], 400)).toEqual([]);
});
