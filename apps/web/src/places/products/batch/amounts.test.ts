import { writeQuantity } from '@larderbook/messages';
import type { Quantity } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { allowedFigure, ownFigure, toWeighIn } from './amounts';

const written = (...figures: Quantity[]) => figures.map((figure) => writeQuantity(figure, 'en-US')).join(' ');
const toWeigh = (...asked: Parameters<typeof toWeighIn>) => toWeighIn(...asked).map((figures) => written(...figures));

test.each([
  [60, 'lb', ['60 g']],
  [480.81, 'lb', ['480.8 g', '1 lb 0.96 oz']],
  [11_339.81, 'lb', ['11,340 g', '25 lb']],
  [100, 'lb', ['100 g']],
  [999.95, 'kg', ['1,000 g']],
  [2500, 'kg', ['2,500 g', '2.5 kg']],
] as const)('%f g in a shop of %s is weighed as %j', (grams, heavy, said) => {
  expect(toWeigh(grams, heavy)).toEqual(said);
});

test('what is allowed is rounded inward', () => {
  expect(written(allowedFigure(43.5449, 'up'))).toBe('43.6 g');
  expect(written(allowedFigure(56.6999, 'down'))).toBe('56.6 g');
});

test('what is restricted is read towards the inside of its limit', () => {
  expect(toWeigh(11.46, 'kg', 'down')).toEqual(['11.4 g']);
  expect(toWeigh(1134.47, 'lb', 'down')).toEqual(['1,134.4 g', '2 lb 8.01 oz']);
});

test('a weight in the shop’s own unit', () => {
  expect(written(ownFigure(22_679.6, 'lb', 'oz'))).toBe('50 lb');
  expect(written(ownFigure(100, 'lb', 'oz'))).toBe('3.53 oz');
  expect(written(ownFigure(100, 'kg', 'g'))).toBe('100 g');
});
