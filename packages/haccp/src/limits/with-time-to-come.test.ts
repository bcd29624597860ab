import { expect, test } from 'vitest';
import { coldHolding } from '../limit-sets/food-code';
import { degrees } from '../quantity/degrees';
import { judgeRange } from '../kinds/range/judge-range';
import { withTimeToCome } from './with-time-to-come';

const minute = 60_000;
const [cold, warm] = [judgeRange(degrees(36, '°F'), coldHolding), judgeRange(degrees(60, '°F'), coldHolding)];

test.each([
  ['kept at once', 0, 'met'],
  ['kept a day late', 1440, 'met'],
  ['dated two minutes ahead, as clocks of two devices differ', -2, 'met'],
  ['dated three minutes ahead', -3, 'undetermined'],
  ['not kept yet', NaN, 'met'],
])('a value %s', (_case, minutes, kind) => {
  expect(withTimeToCome(cold, minutes * minute).kind).toBe(kind);
});

test('says what to do, and makes no miss milder', () => {
  expect(withTimeToCome(cold, -minute * 60)).toMatchObject({ finding: 'time-to-come' });
  expect(withTimeToCome(warm, -minute * 60)).toEqual(warm);
});
