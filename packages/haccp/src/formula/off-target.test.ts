import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { offTarget } from './off-target';

const g = (value: number) => massOf({ value, unit: 'g' });

test.each([
  ['as targeted', 160, 160, 1, 0],
  ['a twentieth too much', 160, 168, 1, 0],
  ['a twentieth too little', 160, 152, 1, 0],
  ['a tenth of a gram more than a twentieth too much', 160, 168.1, 1, 8.1],
  ['a tenth of a gram more than a twentieth too little', 160, 151.9, 1, -8.1],
  ['weighed in twice', 160, 320, 1, 160],
  ['one step of the scale off, more than a twentieth', 4, 5, 1, 0],
  ['two steps of the scale off', 4, 6, 1, 2],
])('%s', (_case, target, weighed, step, off) => {
  expect(offTarget(g(target), g(weighed), g(step))).toBe(g(off));
});
