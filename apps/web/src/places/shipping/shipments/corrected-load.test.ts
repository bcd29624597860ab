import { expect, test } from 'vitest';
import { isTakenOff, loadOf } from './corrected-load';

const lines = [{ packingId: 'P-1' }, { packingId: 'P-2' }];
const typed = (first: string, second: string) =>
  new Map([
    ['P-1', first],
    ['P-2', second],
  ]);

test('a count that was emptied stays a line, for the contract to refuse', () => {
  expect(loadOf(lines, typed('', '8'))).toEqual([
    { packingId: 'P-1', count: NaN },
    { packingId: 'P-2', count: 8 },
  ]);
  expect(isTakenOff(typed('', '8'), 'P-1')).toBe(false);
});

test('a 0 that was typed takes its line off', () => {
  expect(loadOf(lines, typed('0', '8'))).toEqual([{ packingId: 'P-2', count: 8 }]);
  expect(isTakenOff(typed('0', '8'), 'P-1')).toBe(true);
});
