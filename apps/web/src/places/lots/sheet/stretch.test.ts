import { expect, test } from 'vitest';
import { beginsIn, stretchIn } from './stretch';

const row = { from: 100, to: 200 };

test.each([
  ['runs through the row', { from: 0, to: 900 }, { top: 0, bottom: 1 }],
  ['begins in the row', { from: 150, to: 900 }, { top: 0.5, bottom: 1 }],
  ['ends in the row', { from: 0, to: 125 }, { top: 0, bottom: 0.25 }],
  ['lies within the row', { from: 110, to: 120 }, { top: 0.1, bottom: 0.2 }],
  ['is over before the row', { from: 0, to: 100 }, undefined],
  ['begins after the row', { from: 200, to: 300 }, undefined],
])('a stage that %s', (_case, span, stretch) => {
  expect(stretchIn(row, span)).toEqual(stretch);
});

test('between two entries of the same minute a stage either runs or does not', () => {
  const instant = { from: 100, to: 100 };
  expect(stretchIn(instant, { from: 100, to: 200 })).toEqual({ top: 0, bottom: 1 });
  expect(stretchIn(instant, { from: 0, to: 100 })).toBeUndefined();
});

test('of several rows of one minute only the first begins a stage', () => {
  expect(beginsIn({ from: 100, to: 100, before: 50 }, 100)).toBe(true);
  expect(beginsIn({ from: 100, to: 200, before: 100 }, 100)).toBe(false);
  expect(beginsIn({ from: 100, to: 200, before: 100 }, 150)).toBe(true);
  expect(beginsIn({ from: 100, to: 200 }, 200)).toBe(false);
});

test('a row without duration begins nothing that comes later', () => {
  expect(beginsIn({ from: 100, to: 100 }, 100)).toBe(true);
  expect(beginsIn({ from: 100, to: 100 }, 150)).toBe(false);
});
