import { expect, test } from 'vitest';
import { plainPart } from '../limits/plain-part.test-data';
import { keptPhrase, keptTimes, type HumidityKept } from './humidity-kept';

test.each<[HumidityKept, { intoOven: number; from: number } | undefined]>([
  [
    { how: 'humid throughout', intoOven: '2026-03-02T07:40:00Z', from: '2026-03-02T07:55:00Z', minutes: 110, percent: 92 },
    { intoOven: Date.UTC(2026, 2, 2, 7, 40), from: Date.UTC(2026, 2, 2, 7, 55) },
  ],
  [{ how: 'moisture-proof bag' }, undefined],
])('the moments of %j', (kept, times) => {
  expect(keptTimes(kept)).toEqual(times);
});

test.each<[HumidityKept, string]>([
  [{ how: 'live steam', intoOven: '', from: '', minutes: 110 }, 'kept-live-steam 1 h 50 min'],
  [{ how: 'sealed oven', intoOven: '', from: '', minutes: 60 }, 'kept-sealed-oven 1 h'],
  [{ how: 'humid throughout', intoOven: '', from: '', minutes: 60, percent: 90 }, 'kept-humid-throughout 1 h 90 %'],
  [{ how: 'humid for a quarter', intoOven: '', from: '', minutes: 30, percent: 91 }, 'kept-humid-for-a-quarter 30 min 91 %'],
  [
    { how: 'large piece in a hot oven', oven: { value: 250, unit: '°F' }, piece: { value: 10, unit: 'lb' } },
    'kept-large-piece-in-a-hot-oven 250 °F 10 lb',
  ],
  [{ how: 'moisture-proof bag' }, 'kept-moisture-proof-bag'],
])('how it was humid: %j', (kept, said) => {
  expect(plainPart(keptPhrase(kept))).toBe(said);
});
