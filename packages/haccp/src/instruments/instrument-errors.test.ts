import { expect, test } from 'vitest';
import { degrees } from '../quantity/degrees';
import { massOf } from '../quantity/weigh';
import { sayErrors, scaleErrorOf, scaleStepOf } from './instrument-errors';

test('each instrument that may be wrong is named with its figure', () => {
  const mass = { thousandths: 500, unit: 'g' } as const;
  const meat = { thousandths: 20, unit: 'kg' } as const;
  const errors = { temperature: degrees(-1, '°F'), mass, meat, pH: { thousandths: 50 }, aw: { thousandths: 3 } };
  expect(sayErrors(errors)).toEqual([
    '± 1 °F of the thermometer',
    '± 0.5 g of the scale for ingredients and pieces',
    '± 0.02 kg of the scale for meat',
    '± 0.05 of the pH meter',
    '± 0.003 of the water activity meter',
  ]);
  expect(sayErrors({})).toEqual([]);
});

test('a scale’s step is said with its error, and a tenth of a gram where none is stated', () => {
  const mass = { thousandths: 500, unit: 'g', step: 1000 } as const;
  expect(sayErrors({ mass })).toEqual(['± 0.5 g of the scale for ingredients and pieces, which shows steps of 1 g']);
  expect([scaleStepOf({ mass }), scaleStepOf()]).toEqual([1, 0.1].map((value) => massOf({ value, unit: 'g' })));
});

test('a scale’s error is a mass, and none where none is stated', () => {
  expect(scaleErrorOf({ thousandths: -500, unit: 'g' })).toBe(massOf({ value: 0.5, unit: 'g' }));
  expect(scaleErrorOf(undefined)).toBe(0n);
});
