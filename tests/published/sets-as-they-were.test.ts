import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import * as haccp from '@larderbook/haccp';
import { canonicalJson, catalogue, cookedPoultry, limitSets, type Poultry } from '@larderbook/haccp';

const digest = (value: unknown): string =>
  createHash('sha256').update(canonicalJson(JSON.parse(JSON.stringify(value)))).digest('hex').slice(0, 16);

test.each([
  ['us-inspected-1999', 144, 'e8977038a5bff7d5'],
  ['us-inspected-2017', 125, '4d5c8ec437fd2c36'],
  ['us-inspected-2021', 192, '4c56e9cdfc92319f'],
  ['us-retail-2013', 2, '171c4d2e0565838d'],
  ['us-retail-2017', 37, '476fd605800775a7'],
  ['us-retail-2022', 37, '5e34fd9bb4b3921b'],
  ['us-retail-2026', 2, 'bea9d650236bc163'],
  ['canada-2026', 36, '02a2ebcafccb0ff4'],
  ['united-kingdom-2026', 45, '0416c01e4806754a'],
  ['european-union-2008', 36, '50cd5546ef4cd3ec'],
  ['european-union-2025', 33, 'f00f05adbf248cc9'],
  ['australia-new-zealand-2026', 33, '3c3639acf1fbd472'],
])('every row of %s is what it was, word for word and in its order', (id, count, was) => {
  const set = limitSets.find((one) => one.id === id);
  expect([set?.rows.length, digest(set)]).toEqual([count, was]);
});

/** Every exported limit, by its name. */
const named = Object.entries(haccp)
  .filter(([, value]) => typeof value === 'object' && value !== null && 'kind' in value && 'source' in value)
  .sort(([a], [b]) => (a < b ? -1 : 1));

test('every limit that the code names is what it was', () => {
  expect([named.length, digest(named)]).toEqual([34, '94984e63624868bd']);
});

test('the limits on offer are what they were, in their order', () => {
  expect([catalogue.length, digest(catalogue)]).toEqual([138, 'ad7ba0bea0d5968c']);
});

test('the poultry tables are what they were, for every species and fat', () => {
  const fats = [undefined, 0, ...Array.from({ length: 26 }, (_, half) => half / 2), 40];
  const all = (['chicken', 'turkey', 'other'] satisfies Poultry[]).map((of) => fats.map((fat) => cookedPoultry(of, fat)));
  expect(digest(all)).toBe('767dc32e2c69104b');
});

test('the parameters of the models are what they were', () => {
  const { lethalitySets, growthSetsFor, freezingByThickness, freezingByCentre, degreeHoursFahrenheit, degreeHoursCelsius } = haccp;
  expect(digest([lethalitySets, growthSetsFor('mixed or unknown')])).toBe('2b737282c84f5b00');
  expect(digest([freezingByThickness, freezingByCentre, degreeHoursFahrenheit, degreeHoursCelsius])).toBe('ddf03c46f879955a');
});
