import { expect, test } from 'vitest';
import type { Entry } from '../../../outbox/entry';
import type { Packing } from '../stock/packing';
import { leftBeside, lineProblems, loadCount, loadGrams, putOn, takeOff } from './load';

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

test('what waits on this device to be sent as shipped is not left to load, and a correction is not counted twice', () => {
  const [first, second] = ['01990000-0000-7000-8000-0000000000a1', '01990000-0000-7000-8000-0000000000a2'];
  const packings = [aPacking(first), aPacking(second)];
  const shipment = (count: number, more = {}): Entry => {
    const lines = [{ packingId: first, count }];
    const body = { customerId: second, document: '', takenAt: '2026-03-02T08:00:00Z', lines, ...more };
    const who = { what: '', establishmentId: '', personId: '', takenAt: '' };
    return { id: 's', method: 'PUT', path: '/shipments/s', body, ...who, state: 'waiting', failures: 0 };
  };
  const left = (...unsent: Entry[]) => leftBeside(packings, unsent).map((packing) => packing.left);
  expect(left(shipment(5))).toEqual([7, 12]);
  expect(left(shipment(5), shipment(7))).toEqual([12]);
  expect(left(shipment(5, { amends: second, reason: 'Two stayed' }))).toEqual([12, 12]);
});
