import { expect, test } from 'vitest';
import { massOf } from '../quantity/weigh';
import { scaleErrorOf, scaleStepOf } from './instrument-errors';

test('a scale shows its step, and a tenth of a gram where none is stated', () => {
  const mass = { thousandths: 500, unit: 'g', step: 1000 } as const;
  expect([scaleStepOf({ mass }), scaleStepOf()]).toEqual([1, 0.1].map((value) => massOf({ value, unit: 'g' })));
});

test('a scale’s error is a mass, and none where none is stated', () => {
  expect(scaleErrorOf({ thousandths: -500, unit: 'g' })).toBe(massOf({ value: 0.5, unit: 'g' }));
  expect(scaleErrorOf(undefined)).toBe(0n);
});
