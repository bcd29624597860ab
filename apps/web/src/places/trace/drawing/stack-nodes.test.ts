import { expect, test } from 'vitest';
import { stackNodes } from './stack-nodes';

const node = (wanted: number, height = 10) => ({ wanted, height });

test('where nobody is in the way each stands where it is wanted', () => {
  expect(stackNodes([node(5), node(40), node(100)], 4)).toEqual([5, 40, 100]);
});

test('two that want the same place share it around its middle', () => {
  expect(stackNodes([node(50), node(50)], 4)).toEqual([43, 57]);
});

test('one that is pushed pushes the others, and the order stays', () => {
  expect(stackNodes([node(50), node(20), node(60)], 0)).toEqual([30, 40, 60]);
});

test('an empty column has no tops', () => {
  expect(stackNodes([], 4)).toEqual([]);
});
