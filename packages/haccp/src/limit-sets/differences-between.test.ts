import { describe, expect, test } from 'vitest';
import { aRow } from './a-row.test-data';
import { differencesBetween, differencesOf } from './differences-between';
import type { LimitRow, LimitSet } from './limit-set';

const fat = aRow({ id: 'fat', of: 'fat', figure: '≤ 30 %' });
const table = (figure: string, more: Partial<LimitRow> = {}): LimitRow => aRow({ id: 'cooked', kind: 'dwell', figure }, more);

const set = (rows: LimitRow[], isPartial = false): LimitSet => ({
  id: 'one',
  jurisdiction: 'own',
  title: 'One',
  edition: '1',
  validFrom: '2026',
  rows,
  isPartial,
});

describe('a row that one of two sets has', () => {
  const [whole, part] = [set([fat]), set([], true)];

  test('is missing where the other was read in whole', () => {
    expect(differencesBetween(whole, set([]))).toMatchObject({ onlyHere: [fat], onlyThere: [], notRead: [] });
    expect(differencesBetween(set([]), whole)).toMatchObject({ onlyHere: [], onlyThere: [fat], notRead: [] });
  });

  test('is only not read where the other was read in part, whichever side that is', () => {
    expect(differencesBetween(whole, part)).toMatchObject({ onlyHere: [], notRead: [fat] });
    expect(differencesBetween(part, whole)).toMatchObject({ onlyThere: [], notRead: [fat] });
  });
});

describe('two tables, row by row', () => {
  const here = table('60 °C for 12 min; 63 °C for 4 min');

  test('tell a time that is printed otherwise and a row that one has', () => {
    expect(differencesOf(here, table('60 °C for 10 min; 71 °C for 0 s'))).toEqual([
      { what: '60 °C', here: '12 min', there: '10 min' },
      { what: '63 °C', here: '4 min', there: 'absent' },
      { what: '71 °C', here: 'absent', there: 'no holding time' },
    ]);
  });

  test('of which one was read in part, only by the rows both have', () => {
    expect(differencesOf(here, table('60 °C for 10 min', { isPartial: true }))).toEqual([
      { what: '60 °C', here: '12 min', there: '10 min' },
    ]);
    expect(differencesOf(table('63 °C for 4 min', { isPartial: true }), here)).toEqual([]);
  });
});

test('a table beside a figure differs by what each prints', () => {
  expect(differencesOf(table('60 °C for 12 min'), { ...fat, known: 'second hand' })).toEqual([
    { what: 'figure', here: '140 °F for 12 min; 60 °C for 12 min', there: 'fat ≤ 30 %' },
    { what: 'known', here: 'from memory', there: 'second hand' },
  ]);
});
