import { expect, test } from 'vitest';
import { plainPart } from '../limits/plain-part.test-data';
import { lotCode, patternFault } from './lot-code';

test.each([
  ['{YY}{DDD}-{n}', { date: '2026-05-10', n: 3 }, '26130-3'],
  ['{YYYY}{MM}{DD}-{nn}', { date: '2026-01-02', n: 7 }, '20260102-07'],
  ['{product}-{YY}{MM}{DD}-{n}', { date: '2026-12-31', n: 12, product: 'SAUS' }, 'SAUS-261231-12'],
  ['L{YY}{DDD}{nnn}', { date: '2024-12-31', n: 4 }, 'L24366004'],
])('%s gives a code', (pattern, parts, code) => {
  expect(lotCode(pattern, parts)).toBe(code);
});

test.each([
  ['{YY}{DDD}-{n}', undefined],
  ['{YY}{DDD}', 'pattern-needs-number'],
  ['{YY}-{n}', 'pattern-needs-day'],
  ['{MM}{DD}-{n}', 'pattern-needs-day'],
  ['{YY}{DDD}{n}', undefined],
  ['{n}{YY}{DDD}', 'number-not-apart'],
  ['{YY}{DDD}{product}{n}', 'number-not-apart'],
  ['{YY}{DDD}/{n}', 'lot-code-character /'],
  ['lot{YY}{DDD}-{n}', 'lot-code-character l'],
  ['{YY}{DDD} {n}', 'lot-code-character  '],
  ['{YY}{day}-{n}', 'placeholder-unknown {day} {YYYY}, {YY}, {MM}, {DD}, {DDD}, {n}, {nn}, {nnn}, {product}'],
  ['{YY{DDD}-{n}', 'pattern-needs-day'],
  ['SMOKEHOUSE-{YYYY}{MM}{DD}-{n}', 'lot-code-too-long SMOKEHOUSE-20261231-99 22 20'],
])('the pattern %s is told what is wrong with it', (pattern, said) => {
  const fault = patternFault(pattern);
  expect(fault && plainPart(fault)).toBe(said);
});

test.each([
  ['a day not on the calendar', { date: '2026-02-30', n: 1 }, 'no-day-of-the-calendar 2026-02-30'],
  ['lot zero', { date: '2026-02-28', n: 0 }, 'no-number-of-a-lot 0'],
  ['half a lot', { date: '2026-02-28', n: 1.5 }, 'no-number-of-a-lot 1.5'],
])('%s gives no code', (_case, parts, said) => {
  expect(plainPart(lotCode('{YY}{DDD}-{n}', parts))).toBe(said);
});

test('a product code that is missing, or too long, gives no code', () => {
  const lot = { date: '2026-02-28', n: 1 };
  const codes = [undefined, 'ROASTBEEFROAST', 'süß'].map((product) => lotCode('{product}-{YY}{DDD}-{n}', { ...lot, product }));
  expect(codes.map(plainPart)).toEqual(['product-code-missing', 'lot-code-too-long ROASTBEEFROAST-26059-1 22 20', 'lot-code-character s']);
});
