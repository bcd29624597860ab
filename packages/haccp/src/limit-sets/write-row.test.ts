import { expect, test } from 'vitest';
import { cookedPoultry } from './fsis-poultry';
import { both, printedSeconds } from './printed';
import { celsius, cooled, figure, held, ingoingAtMost, stage } from './write-row';

test('a most that two decimals cannot hold is kept in thousandths and never rounded up', () => {
  expect(ingoingAtMost('sodium erythorbate', 546.875, '7/8 oz per 100 lb')).toMatchObject({
    max: 54_687, maxThousandths: 546_875,
  });
  expect(ingoingAtMost('sodium nitrite', 156.25, '1/4 oz per 100 lb')).not.toHaveProperty('maxThousandths');
});

test.each([
  ['a temperature with three decimals', () => both(160, 71.111), '71.111 is not a printed temperature'],
  ['a °C with three decimals', () => celsius(71.111), '71.111 is no printed figure'],
  ['a figure with four decimals', () => figure('fat', '%', { max: 30.0001 }), '30.0001 is no printed figure'],
  ['a time without its unit', () => printedSeconds('85'), '"85" is not a printed time'],
  ['a time too long to count', () => printedSeconds(`${'9'.repeat(20)}s`), 'is not a printed time'],
])('%s is refused', (_case, write, because) => {
  expect(write).toThrow(because);
});

test('times are read to a tenth of their unit', () => {
  expect(held([[celsius(54.4), '63.3m'], [celsius(71.1), '16.9s']]).rows.map(({ seconds }) => seconds)).toEqual([3798, 16.9]);
});

test('a chill may be shown by its bounds alone: its longest gap is all the time it has', () => {
  const [first, second] = [stage(celsius(54.4), celsius(26.6), 1.5), stage(celsius(26.6), celsius(4.4), 5)];
  expect(cooled(first, second).longestGapSeconds).toBe(6.5 * 3600);
  const inAll = stage(celsius(57.2), celsius(5), 6, 'start');
  expect(cooled(stage(celsius(57.2), celsius(21.1), 2), inAll).longestGapSeconds).toBe(6 * 3600);
});

test('the column for half a percent of fat is that of 1 %, and of any more than 12 % that of 12 %', () => {
  expect(cookedPoultry('chicken', 0.5).rows).toEqual(cookedPoultry('chicken', 1).rows);
  expect(cookedPoultry('chicken', 40).rows).toEqual(cookedPoultry('chicken', 12).rows);
});
