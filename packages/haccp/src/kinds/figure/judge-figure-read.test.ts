import { expect, test } from 'vitest';
import type { FigureLimit } from './figure-limit';
import { judgeFigureRead } from './judge-figure-read';

const source = { citation: 'an example', edition: 'none', confirmed: false };
const dry: FigureLimit = { kind: 'figure', of: 'water activity', unit: 'aw', max: 910, source };

test.each([
  ['on the most', { value: 0.91, unit: 'aw' }, 'met'],
  ['a thousandth above it', { value: 0.911, unit: 'aw' }, 'missed'],
  ['with four decimals', { value: 0.9101, unit: 'aw' }, 'undetermined'],
  ['in another unit', { value: 0.8, unit: 'pH' }, 'undetermined'],
  ['not read', undefined, 'undetermined'],
])('a water activity %s', (_case, read, kind) => {
  expect(judgeFigureRead(read, dry).kind).toBe(kind);
});

test.each([
  ['on what is left of the most', 0.907, dry, 'met'],
  ['within the error of it', 0.908, dry, 'missed'],
  ['above what is left of a least', 0.903, { ...dry, max: undefined, min: 900 }, 'met'],
  ['within the error of a least', 0.902, { ...dry, max: undefined, min: 900 }, 'missed'],
  ['between bounds nearer than the error', 0.905, { ...dry, min: 905 }, 'missed'],
  ['without a bound', 0.9, { ...dry, max: undefined }, 'undetermined'],
] as const)('a meter’s error allowed for, %s', (_case, value, limit, kind) => {
  const verdict = judgeFigureRead({ value, unit: 'aw' }, limit, { aw: { thousandths: 3 } });
  expect(verdict).toMatchObject({ kind, notes: [{ code: 'allowed-for-aw', figures: { error: { value: '0.003', unit: 'ratio' } } }] });
});

test('of two bounds the nearer is told, with the meter’s error off it', () => {
  const sour: FigureLimit = { ...dry, of: 'pH', unit: 'pH', min: 4600, max: 5300 };
  const spare = (value: number) => judgeFigureRead({ value, unit: 'pH' }, sour, { pH: { thousandths: 50 } }).figures.spare;
  expect(spare(5.24)).toEqual({ value: '0.01', unit: 'ratio' });
  expect(spare(4.7)).toEqual({ value: '0.05', unit: 'ratio' });
});

test('an error of nothing, or of another meter, changes nothing', () => {
  const errors = { aw: { thousandths: 0 }, pH: { thousandths: 50 } };
  expect(judgeFigureRead({ value: 0.91, unit: 'aw' }, dry, errors)).toEqual(judgeFigureRead({ value: 0.91, unit: 'aw' }, dry));
  const fat: FigureLimit = { ...dry, of: 'fat', unit: '%', max: 30_000 };
  expect(judgeFigureRead({ value: 30, unit: '%' }, fat, errors).kind).toBe('met');
});
