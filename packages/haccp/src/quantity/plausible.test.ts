import { expect, test } from 'vitest';
import { degrees } from './degrees';
import { isPlausible, looksLikeOtherUnit } from './plausible';

const core = { min: { '°F': 3000, '°C': -110 }, max: { '°F': 19000, '°C': 8780 } };

test.each([
  ['°F typed where °C is set', degrees(151.5, '°C'), true],
  ['°C typed where °F is set', degrees(4.4, '°F'), true],
  ['a believable °C', degrees(66, '°C'), false],
  ['a believable °F', degrees(151.5, '°F'), false],
  ['a number that makes sense in neither', degrees(999, '°C'), false],
  ['a number that makes sense in both', degrees(40, '°C'), false],
])('%s', (_case, entered, asks) => {
  expect(looksLikeOtherUnit(entered, core)).toBe(asks);
});

test('both ends of the plausible range are inside', () => {
  expect(isPlausible(degrees(190, '°F'), core)).toBe(true);
  expect(isPlausible(degrees(190.01, '°F'), core)).toBe(false);
});
