import { expect, test } from 'vitest';
import type { Packing } from '../stock/packing';
import { lineProblems, loadCount, loadGrams, putOn, takeOff } from './load';

const aPacking = (packingId: string, grams = 500): Packing => ({
  packingId,
  rowId: packingId,
  code: `${packingId}-P1`,
  lotId: 'lot',
  lotCode: 'lot',
  productName: 'Sausage',
  count: 20,
  left: 12,
  net: { value: grams, unit: 'g', grams },
  useBy: '2026-03-14',
  flags: [],
  made: { personId: 'p', name: 'Ivo Tarn', at: '', recordedAt: '', station: '' },
  standing: 'cleared',
  mayShip: true,
  because: [],
});
const [sausage, roast] = [aPacking('sausage'), aPacking('roast', 2000)];
const load = [
  { packing: sausage, count: 3 },
  { packing: roast, count: 2 },
];

test('packages of a run that is on the load already change its count and keep its place', () => {
  expect(putOn(load, { packing: sausage, count: 5 }).map(({ count }) => count)).toEqual([5, 2]);
  expect(putOn(load, { packing: aPacking('ham'), count: 1 })).toHaveLength(3);
});

test('a run that is taken off leaves the others', () => {
  expect(takeOff(load, 'sausage')).toEqual([{ packing: roast, count: 2 }]);
});

test('the load is counted and weighed', () => {
  expect([loadCount(load), loadGrams(load)]).toEqual([5, 5500]);
});

test('a refusal stands beside the line it names, whichever part of the line is wrong', () => {
  expect([...lineProblems(load, { 'lines.1': '1 package is left of roast-P1, 2 were asked for.' })]).toEqual([
    ['roast', '1 package is left of roast-P1, 2 were asked for.'],
  ]);
  expect([...lineProblems(load, { 'lines.0.count': 'At least 1.' }).keys()]).toEqual(['sausage']);
  expect(lineProblems(load, { document: 'At most 80 characters.', 'lines.10': 'another line' }).size).toBe(0);
});
