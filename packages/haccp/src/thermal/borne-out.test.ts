import { expect, test } from 'vitest';
import { onCommonScale } from '../quantity/convert-degrees';
import { degrees } from '../quantity/degrees';
import type { Surroundings } from './around-core';
import { borneOut } from './borne-out';

const named = (setPoint: number | undefined, ...read: number[]): Surroundings => ({
  setPoint: setPoint === undefined ? undefined : degrees(setPoint, '°C'),
  readings: read.map((value, at) => ({ at, temperature: degrees(value, '°C') })),
});
const celsius = (value: number): number => onCommonScale(degrees(value, '°C'));

test.each<[string, Surroundings, coldest: number | undefined, hottest: number | undefined]>([
  ['nothing', named(undefined), undefined, undefined],
  ['one value, of which nothing tells whether it is right', named(undefined, -18), undefined, undefined],
  ['one value near the set point', named(2, 6), 6, 6],
  ['one value far from the set point', named(2, 6.01), undefined, undefined],
  ['two values near one another', named(undefined, -18, -14), -18, -14],
  ['two values far apart: the less far of the two', named(undefined, -18, 2), 2, -18],
  ['a slip among several', named(undefined, 2, 1, -40, 3), 1, 3],
  ['a slip at either end', named(1, 2, 260, 1, -40, 3), 1, 3],
])('%s', (_case, surroundings, coldest, hottest) => {
  expect(borneOut(surroundings, 'coldest')).toBe(coldest === undefined ? undefined : celsius(coldest));
  expect(borneOut(surroundings, 'hottest')).toBe(hottest === undefined ? undefined : celsius(hottest));
});

test('a value that came twice for one instant does not bear itself out, nor does one that is no reading', () => {
  const temperature = degrees(-40, '°C');
  const twice: Surroundings = {
    readings: [
      { at: 1, temperature },
      { at: 1, temperature },
      { at: NaN, temperature },
    ],
  };
  expect(borneOut(twice, 'coldest')).toBeUndefined();
});
