import { describe, expect, test } from 'vitest';
import { faultsOfRow, faultsOfSet, faultsOfSets } from './faults-of-set';
import { comeUpWithinSixHours } from './fsis-come-up';
import type { LimitRow, LimitSet } from './limit-set';
import { ownSet } from './own-set';
import { both } from './printed';
import { readStage } from './read-cell';
import { defaultsOf, limitSetById, limitSets, limitSetsOf, usualSetOf } from './sets';

test('no published set has a fault, alone or among the others', () => {
  expect(faultsOfSets(limitSets)).toEqual([]);
});

test('an unconfirmed figure is never a default', () => {
  const defaults = limitSets.flatMap(defaultsOf);
  expect(defaults.length).toBeGreaterThan(60);
  expect(defaults.filter(({ limit }) => !limit.source.confirmed)).toEqual([]);
});

test.each(Object.entries(usualSetOf))('%s has its usual set, the latest or the one that was read', (jurisdiction, id) => {
  expect(limitSetById(id)?.jurisdiction).toBe(jurisdiction);
  expect(limitSetsOf(limitSetById(id)?.jurisdiction ?? 'own').map((set) => set.id)).toContain(id);
});

const row = (id: string): LimitRow => {
  const found = limitSetById('us-inspected-2021')?.rows.find((one) => one.id === id);
  if (!found) throw new Error(`no row ${id}`);
  return found;
};
const table = row('cooked-meat-6.5-log');
const chill = row('cooling-any');
const fat = row('fat-fresh-pork-sausage');
const withLimit = (one: LimitRow, limit: object): LimitRow => ({
  ...one,
  limit: { ...one.limit, ...limit } as LimitRow['limit'],
});

describe('a row is refused', () => {
  test.each<[string, LimitRow, string]>([
    [
      'without its citation',
      withLimit(fat, { source: { ...fat.limit.source, citation: ' ' } }),
      'The source’s citation or edition, or the paragraph or file, is missing.',
    ],
    ['without its paragraph', { ...fat, paragraph: '' }, 'The source’s citation or edition, or the paragraph or file, is missing.'],
    ['with an id in words', { ...fat, id: 'Fat of pork' }, 'The id is not in small letters, digits and hyphens.'],
    [
      'when unconfirmed and offered first',
      { ...withLimit(fat, { source: { ...fat.limit.source, confirmed: false } }), known: 'from memory' },
      'An unconfirmed figure is never a default.',
    ],
    ['when remembered and called confirmed', { ...fat, known: 'from memory' }, 'Confirmed is only what was read in the source.'],
    ['on a day that never was', { ...fat, validFrom: '2025-02-30' }, '"2025-02-30" is no date.'],
    ['when it ends before it counts', { ...fat, validUntil: '1999' }, 'It ends before it counts.'],
    ['without a figure', withLimit(fat, { max: undefined }), 'The figure has neither a least nor a most.'],
    ['with half a thousandth', withLimit(fat, { max: 0.5 }), 'A bound is no whole number of thousandths.'],
    ['with a sign beside no figure', withLimit(fat, { signs: { min: '>' } }), 'A sign stands beside no figure.'],
    [
      'with a hotter row that takes longer',
      withLimit(table, {
        rows: [
          { at: both(130, 54.4), seconds: 10 },
          { at: both(131, 55), seconds: 11 },
        ],
      }),
      'Row 2 takes longer than the colder one before.',
    ],
    [
      'with rows out of order',
      withLimit(table, {
        rows: [
          { at: both(131, 55), seconds: 10 },
          { at: both(130, 54.4), seconds: 9 },
        ],
      }),
      'Row 2 is not hotter than the one before.',
    ],
    [
      'with °F and °C that disagree',
      withLimit(table, { rows: [{ at: both(130, 54.5), seconds: 10 }] }),
      '130 °F and 54.5 °C do not agree.',
    ],
    ['with a pair called odd that is not', { ...chill, printedOdd: [both(130, 54.4)] }, '130 °F and 54.4 °C is named as odd and is not.'],
    ['without a tolerated gap', withLimit(chill, { longestGapSeconds: 0 }), 'The longest tolerated gap is missing.'],
    [
      'with a stage that has no time',
      withLimit(chill, { stages: [readStage('130 °F (54.4 °C) to 80 °F (26.7 °C) in 0 h')] }),
      'A stage of the cooling has no time.',
    ],
    [
      'with a stage hotter than the last ended',
      withLimit(chill, {
        stages: ['130 °F (54.4 °C) to 80 °F (26.7 °C) in 1 h', '120 °F (48.9 °C) to 55 °F (12.8 °C) in 5 h'].map(readStage),
      }),
      'A stage of the cooling begins hotter than the one before ended.',
    ],
    [
      'with a condition without figure',
      { ...fat, conditions: [{ kind: 'nitrite', least: 0, per: 'batch' }] },
      'A condition has no usable figure.',
    ],
    ['with a condition that names nothing', { ...fat, conditions: [{ kind: 'product', among: [] }] }, 'A condition names nothing.'],
    ['with a condition that says nothing', { ...fat, conditions: [{ kind: 'statement', says: ' ' }] }, 'A condition says nothing.'],
    ['with a band that has no time', { ...fat, limit: { ...comeUpWithinSixHours, maxSeconds: 0 } }, 'The band has no time.'],
    ['when what it prints holds no number', withLimit(fat, { printed: '≤ NaN %' }), 'It prints without its figure.'],
  ])('%s', (_case, one, because) => {
    expect(faultsOfRow(one)).toContain(because);
  });

  test('the printed pairs that are known to be odd are let through, and only they', () => {
    expect(faultsOfRow(table)).toEqual([]);
    expect(faultsOfRow({ ...table, printedOdd: [] })).toEqual(['137 °F and 58.4 °C do not agree.', '139 °F and 59.5 °C do not agree.']);
  });
});

describe('a set is refused', () => {
  const set: LimitSet = { id: 'one', jurisdiction: 'own', title: 'One', edition: '1', validFrom: '2026', rows: [fat] };
  test.each<[string, LimitSet[], string]>([
    ['with one id on two rows', [{ ...set, rows: [fat, fat] }], 'The id is used twice.'],
    ['with its own id used twice', [set, set], 'The id of the set is used twice.'],
    ['replacing nothing', [{ ...set, replaces: 'zero' }], 'The set it replaces, zero, is not there.'],
    [
      'replacing a newer one',
      [
        { ...set, id: 'zero', validFrom: '2027' },
        { ...set, replaces: 'zero' },
      ],
      'It is not newer than zero.',
    ],
    [
      'replacing another jurisdiction',
      [
        { ...set, id: 'zero', validFrom: '2020', jurisdiction: 'Canada' },
        { ...set, replaces: 'zero' },
      ],
      'It replaces a set of another jurisdiction.',
    ],
    ['without its edition', [{ ...set, edition: '' }], 'The set has no title or no edition.'],
    ['that counts from no day', [{ ...set, validFrom: 'soon' }], '"soon" is no date from which the set counts.'],
    ['that counts from a day there is not', [{ ...set, validFrom: '2026-02-30' }], '"2026-02-30" is no date from which the set counts.'],
  ])('%s', (_case, sets, because) => {
    expect(faultsOfSets(sets).map((fault) => fault.because)).toContain(because);
  });

  test('one of one’s own comes back only when it is sound', () => {
    const own = { id: 'ours', title: 'Ours', edition: '2026', validFrom: '2026-01-01', rows: [fat] };
    expect(ownSet(own)).toEqual({ set: { ...own, jurisdiction: 'own' } });
    expect(ownSet({ ...own, rows: [] })).toEqual({ faults: [{ set: 'ours', because: 'The set has no rows.' }] });
    expect(ownSet({ ...own, rows: [withLimit(fat, { min: 2000, max: 1000 })] })).toMatchObject({
      faults: [{ row: fat.id, because: 'The least is more than the most.' }],
    });
  });

  test('an edition of one’s own has a name of its own and does not count from before the one it replaces', () => {
    const named = { id: 'ours-2', title: 'Ours', edition: '2026-2', replaces: 'ours' };
    const own = { ...named, validFrom: '2026-03-01', rows: [fat] };
    const before = (edition: string, validFrom: string) => ({ edition, validFrom });
    expect(ownSet(own, before('2026-1', '2026-01-01'))).toMatchObject({ set: { replaces: 'ours' } });
    expect(ownSet(own, before('2026-1', '2026-03-01'))).toMatchObject({ set: { replaces: 'ours' } });
    expect(ownSet(own, before('2026-2', '2026-03-02'))).toEqual({
      faults: [
        { set: 'ours-2', because: 'The edition it replaces is called 2026-2 too.' },
        { set: 'ours-2', because: 'It counts from 2026-03-01, before the edition it replaces (2026-03-02).' },
      ],
    });
  });

  test('faults name the set and the row', () => {
    expect(faultsOfSet({ ...set, rows: [{ ...fat, title: '' }] })).toEqual([{ set: 'one', row: fat.id, because: 'The row has no title.' }]);
  });
});
