import { expect, test } from 'vitest';
import { readLines } from './read-lines';

test('a name and its percentage stand on each line; empty lines count for nothing', () => {
  expect(readLines('Salt 1.8\n\nBlack pepper; 0.25 %\n')).toEqual({
    rows: [
      { name: 'Salt', percent: 1.8 },
      { name: 'Black pepper', percent: 0.25 },
    ],
  });
});

test.each(['Salt', '1.8', 'Salt 1,8', 'Salt −1'])('“%s” is named with its line', (line) => {
  expect(readLines(`Water 5\n${line}`)).toEqual({
    rows: [],
    fault: expect.objectContaining({ figures: expect.objectContaining({ line: 2 }) }),
  });
});
