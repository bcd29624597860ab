import { expect, test } from 'vitest';
import { sayHumidityTimes, type HumidityKept } from './humidity-kept';

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
