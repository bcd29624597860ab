import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { ingoingPpm, formatIngoing, substanceIn } from './ingoing';
import { nitriteByCertificate } from './natural-nitrite';
import { formulaPercentOf, percentOf } from './percent-of';
import { stabilityOf } from './shelf-stability';
import { analysed } from './water-and-fat';

const kilo = massOf({ value: 1, unit: 'kg' });

test.each([
  ['a mix below nothing', substanceIn(-kilo, 6.25), 'A mix cannot weigh less than nothing.'],
  ['a substance below nothing', ingoingPpm({ method: 'chopped', substance: -1n, greenMeat: kilo }), /less than nothing/],
  ['celery powder of no weight', nitriteByCertificate(0n, 'C-7', undefined), 'The natural source has no weight.'],
  ['a weight below nothing', percentOf(-kilo, kilo), 'A weight below nothing has no percentage.'],
  ['a percentage of it for the formula', formulaPercentOf(-kilo, kilo), 'A weight below nothing has no percentage.'],
  ['more than all the water', stabilityOf({ pH: 5, aw: 1.001 }), 'A water activity of 1.001 cannot be.'],
  ['less than no water', stabilityOf({ pH: 5, aw: -0.1 }), 'A water activity of -0.1 cannot be.'],
  ['a fat with four decimals', analysed(30.0001), /^30.0001 % is no analysis/],
  ['more fat than there is of all', analysed(101), /^101 % is no analysis/],
])('%s is a fault and no figure', (_case, worked, fault) => {
  expect(worked).toEqual({ fault: typeof fault === 'string' ? fault : expect.stringMatching(fault) });
});

test('a ratio to no weight is said as no figure', () => {
  expect(formatIngoing({ numerator: 1n, denominator: 0n })).toBe('no figure');
});
