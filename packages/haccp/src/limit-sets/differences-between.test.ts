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
      { what: 'time', at: { '°C': 6000 }, here: 720, there: 600 },
      { what: 'time', at: { '°C': 6300 }, here: 240, there: undefined },
      { what: 'time', at: { '°C': 7100 }, here: undefined, there: 0 },
    ]);
  });

  test('of which one was read in part, only by the rows both have', () => {
    expect(differencesOf(here, table('60 °C for 10 min', { isPartial: true }))).toEqual([
      { what: 'time', at: { '°C': 6000 }, here: 720, there: 600 },
    ]);
    expect(differencesOf(table('63 °C for 4 min', { isPartial: true }), here)).toEqual([]);
  });
});

test('what a row asks for, and how binding it is, are differences by themselves', () => {
  const asked: LimitRow = { ...fat, conditions: [{ kind: 'product', among: ['cooked sausage'] }], force: 'law' };
  expect(differencesOf(fat, asked)).toEqual([
    { what: 'conditions', here: fat.conditions, there: asked.conditions },
    { what: 'force', here: 'guide', there: 'law' },
  ]);
});

test('a table beside a figure differs by what each prints', () => {
  const held = table('60 °C for 12 min');
  expect(differencesOf(held, { ...fat, known: 'second hand' })).toEqual([
    { what: 'figure', here: held.limit, there: fat.limit },
    { what: 'known', here: 'from memory', there: 'second hand' },
  ]);
});
