import { expect, test } from 'vitest';
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
  ['{YY}{DDD}', 'The pattern needs {n}, so that two lots of a day differ.'],
  ['{YY}-{n}', 'The pattern needs the year and the day, such as {YY}{DDD}, so that no code comes twice.'],
  ['{MM}{DD}-{n}', 'The pattern needs the year and the day, such as {YY}{DDD}, so that no code comes twice.'],
  ['{YY}{DDD}{n}', undefined],
  ['{n}{YY}{DDD}', 'Set {n} apart with - or a letter, so that no two lots can get the same code.'],
  ['{YY}{DDD}{product}{n}', 'Set {n} apart with - or a letter, so that no two lots can get the same code.'],
  ['{YY}{DDD}/{n}', '"/" cannot stand in a lot code; use A to Z, 0 to 9 and -.'],
  ['lot{YY}{DDD}-{n}', '"l" cannot stand in a lot code; use A to Z, 0 to 9 and -.'],
  ['{YY}{DDD} {n}', '" " cannot stand in a lot code; use A to Z, 0 to 9 and -.'],
  ['{YY}{day}-{n}', '{day} is not known; use {YYYY}, {YY}, {MM}, {DD}, {DDD}, {n}, {nn}, {nnn}, {product}.'],
  ['{YY{DDD}-{n}', 'The pattern needs the year and the day, such as {YY}{DDD}, so that no code comes twice.'],
  ['SMOKEHOUSE-{YYYY}{MM}{DD}-{n}', 'SMOKEHOUSE-20261231-99 has 22 characters; a lot code has at most 20.'],
])('the pattern %s is told what is wrong with it', (pattern, sentence) => {
  expect(patternFault(pattern)).toBe(sentence);
});

test.each([
  ['a day not on the calendar', { date: '2026-02-30', n: 1 }, '"2026-02-30" is not a day of the calendar.'],
  ['lot zero', { date: '2026-02-28', n: 0 }, '0 is not the number of a lot; they count from 1.'],
  ['half a lot', { date: '2026-02-28', n: 1.5 }, '1.5 is not the number of a lot; they count from 1.'],
])('%s gives no code', (_case, parts, sentence) => {
  expect(() => lotCode('{YY}{DDD}-{n}', parts)).toThrow(sentence);
});

test('a product code that is missing, or too long, gives no code', () => {
  expect(() => lotCode('{product}-{YY}{DDD}-{n}', { date: '2026-02-28', n: 1 })).toThrow('there is none');
  expect(() => lotCode('{product}-{YY}{DDD}-{n}', { date: '2026-02-28', n: 1, product: 'ROASTBEEFROAST' })).toThrow('at most 20');
  expect(() => lotCode('{product}-{YY}{DDD}-{n}', { date: '2026-02-28', n: 1, product: 'süß' })).toThrow('cannot stand in a lot code');
});
