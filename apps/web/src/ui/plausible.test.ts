import { expect, test } from 'vitest';
import { inEnglish } from './in-english.test-data';
import { askByRange, meantInstead } from './plausible';

/** Example ranges of a cooked core, for this test only. */
const units = [
  { unit: '°C', least: 40, most: 100, decimals: 1 },
  { unit: '°F', least: 104, most: 212, decimals: 1 },
];

test.each([
  ['usual', 71.8, undefined],
  ['on the edge of usual', 40, undefined],
  ['typed in °F where °C is set', 165, [{ value: 165, unit: '°F' }]],
  ['two figures swapped', 17.8, [{ value: 71.8, unit: '°C' }]],
  ['point forgotten', 718, [{ value: 71.8, unit: '°C' }]],
  ['nothing near it', 4, []],
])('a value that is %s', (_case, value, meant) => {
  expect(meantInstead(value, '°C', units)).toEqual(meant);
});

test('the question by the range says what is usual', () => {
  expect(askByRange(165, '°C', units, inEnglish('recording'))).toEqual({
    because: 'Usual is 40 to 100 °C.',
    meant: [{ value: 165, unit: '°F' }],
  });
  expect(askByRange(71.8, '°C', units, inEnglish('recording'))).toBeUndefined();
});
