import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { leftOf } from './left-of';

const weight = { value: 60, unit: 'lb' as const, grams: 27_215.5422 };

test.each([
  ['untouched', 27_215.5422, 'all of it left'],
  ['used in part', 13_607.7711, '30 lb left'],
  ['used to the last gram', 0, 'nothing left'],
])('of a delivery that is %s the list says what is left, in its own unit', (_case, leftGrams, said) => {
  expect(leftOf({ decision: 'accepted', weight, leftGrams }, inEnglish('receiving'))).toBe(said);
});

test('of a delivery that was sent back nothing is said to be left', () => {
  expect(leftOf({ decision: 'refused', weight, leftGrams: 0 }, inEnglish('receiving'))).toBeUndefined();
});
