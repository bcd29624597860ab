import { expect, test } from 'vitest';
import { plausibleRange, rangeText } from './plausible-range';

test('a range typed in the shop’s unit is kept in both', () => {
  expect(plausibleRange({ least: '32', most: '212' }, '°F')).toEqual({ '°F': [3200, 21200], '°C': [0, 10000] });
  expect(plausibleRange({ least: '-5', most: '110.5' }, '°C')).toEqual({ '°F': [2300, 23090], '°C': [-500, 11050] });
});

test.each([
  ['an end is missing', { least: '32', most: '' }],
  ['the ends are swapped', { least: '212', most: '32' }],
])('nothing while %s', (_case, text) => {
  expect(plausibleRange(text, '°F')).toBeUndefined();
});

test('it is read back as it was typed', () => {
  expect(rangeText({ '°F': [-1000, 21250], '°C': [-2333, 10028] }, '°F')).toEqual({ least: '-10', most: '212.5' });
});
