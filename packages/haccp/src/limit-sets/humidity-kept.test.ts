import { expect, test } from 'vitest';
import { sayHumidityKept, sayHumidityTimes, type HumidityKept } from './humidity-kept';

const say = (at: number) => new Date(at).toISOString().slice(11, 16);

test.each<[string, HumidityKept, string]>([
  [
    'an option that is timed says both its moments',
    { how: 'humid throughout', intoOven: '2026-03-02T07:40:00Z', from: '2026-03-02T07:55:00Z', minutes: 110, percent: 92 },
    'into the oven 07:40, humid from 07:55',
  ],
  ['one that is not has none', { how: 'moisture-proof bag' }, ''],
])('%s', (_case, kept, said) => {
  expect(sayHumidityTimes(kept, say)).toBe(said);
});

test.each<[HumidityKept, string]>([
  [{ how: 'live steam', intoOven: '', from: '', minutes: 110 }, 'live steam, 1 h 50 min in all'],
  [{ how: 'sealed oven', intoOven: '', from: '', minutes: 60 }, 'sealed oven, 1 h in all'],
  [{ how: 'humid throughout', intoOven: '', from: '', minutes: 60, percent: 90 }, 'relative humidity at least 90 % for 1 h'],
  [{ how: 'humid for a quarter', intoOven: '', from: '', minutes: 30, percent: 91 }, 'relative humidity at least 91 % for 30 min'],
  [
    { how: 'large piece in a hot oven', oven: { value: 250, unit: '°F' }, piece: { value: 10, unit: 'lb' } },
    'a piece of 10 lb, the oven at least 250 °F',
  ],
  [{ how: 'moisture-proof bag' }, 'sealed moisture-proof bag'],
])('how it was humid is said in a few words: %j', (kept, said) => {
  expect(sayHumidityKept(kept)).toBe(said);
});
