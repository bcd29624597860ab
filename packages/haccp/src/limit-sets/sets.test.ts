import { describe, expect, test } from 'vitest';
import { faultsOfRow, faultsOfSet, faultsOfSets } from './faults-of-set';
import { comeUpWithinSixHours } from './fsis-come-up';
import type { LimitRow, LimitSet } from './limit-set';
import { ownSet } from './own-set';
import { both } from './printed';
import { plainPart } from '../limits/plain-part.test-data';
import { readStage } from './read-cell';
import { defaultsOf, limitSetById, limitSets, usualSetOf } from './sets';

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
    ['without its citation', withLimit(fat, { source: { ...fat.limit.source, citation: ' ' } }), 'source-missing'],
    ['without its paragraph', { ...fat, paragraph: '' }, 'source-missing'],
    ['with an id in words', { ...fat, id: 'Fat of pork' }, 'id-unusable'],
    [
      'when unconfirmed and offered first',
      { ...withLimit(fat, { source: { ...fat.limit.source, confirmed: false } }), known: 'from memory' },
      'default-unconfirmed',
    ],
    ['when remembered and called confirmed', { ...fat, known: 'from memory' }, 'confirmed-unread'],
    ['on a day that never was', { ...fat, validFrom: '2025-02-30' }, 'no-such-date 2025-02-30'],
    ['when it ends before it counts', { ...fat, validUntil: '1999' }, 'ends-before-it-counts'],
    ['without a figure', withLimit(fat, { max: undefined }), 'neither-least-nor-most'],
    ['with half a thousandth', withLimit(fat, { max: 0.5 }), 'bound-unusable'],
    ['with a sign beside no figure', withLimit(fat, { signs: { min: '>' } }), 'sign-without-figure'],
    [
      'with a hotter row that takes longer',
      withLimit(table, {
        rows: [
          { at: both(130, 54.4), seconds: 10 },
          { at: both(131, 55), seconds: 11 },
        ],
      }),
      'row-longer 2',
    ],
    [
      'with rows out of order',
      withLimit(table, {
        rows: [
          { at: both(131, 55), seconds: 10 },
          { at: both(130, 54.4), seconds: 9 },
        ],
      }),
      'row-not-hotter 2',
    ],
    ['with °F and °C that disagree', withLimit(table, { rows: [{ at: both(130, 54.5), seconds: 10 }] }), 'pair-disagrees 130 °F 54.5 °C'],
    ['with a pair called odd that is not', { ...chill, printedOdd: [both(130, 54.4)] }, 'pair-not-odd 130 °F 54.4 °C'],
    ['without a tolerated gap', withLimit(chill, { longestGapSeconds: 0 }), 'gap-unusable'],
    [
      'with a stage that has no time',
      withLimit(chill, { stages: [readStage('130 °F (54.4 °C) to 80 °F (26.7 °C) in 0 h')] }),
      'stage-no-time',
    ],
    [
      'with a stage hotter than the last ended',
      withLimit(chill, {
        stages: ['130 °F (54.4 °C) to 80 °F (26.7 °C) in 1 h', '120 °F (48.9 °C) to 55 °F (12.8 °C) in 5 h'].map(readStage),
      }),
      'stage-hotter',
    ],
    ['with a condition without figure', { ...fat, conditions: [{ kind: 'nitrite', least: 0, per: 'batch' }] }, 'condition-no-figure'],
    ['with a condition that names nothing', { ...fat, conditions: [{ kind: 'product', among: [] }] }, 'condition-names-nothing'],
    ['with a condition that says nothing', { ...fat, conditions: [{ kind: 'statement', says: ' ' }] }, 'condition-says-nothing'],
    ['with a band that has no time', { ...fat, limit: { ...comeUpWithinSixHours, maxSeconds: 0 } }, 'band-no-time'],
    [
      'with a temperature in no unit',
      withLimit(chill, { stages: [{ ...readStage('130 °F (54.4 °C) to 80 °F (26.7 °C) in 1 h'), to: {} }] }),
      'figure-missing',
    ],
    ['when what it prints holds no number', withLimit(fat, { printed: '≤ NaN %' }), 'comparison-missing'],
  ])('%s', (_case, one, because) => {
    expect(faultsOfRow(one).map(plainPart)).toContain(because);
  });

  test('the printed pairs that are known to be odd are let through, and only they', () => {
    expect(faultsOfRow(table)).toEqual([]);
    expect(faultsOfRow({ ...table, printedOdd: [] }).map(plainPart)).toEqual([
      'pair-disagrees 137 °F 58.4 °C',
      'pair-disagrees 139 °F 59.5 °C',
    ]);
  });
});

describe('a set is refused', () => {
  const set: LimitSet = { id: 'one', jurisdiction: 'own', title: 'One', edition: '1', validFrom: '2026', rows: [fat] };
  test.each<[string, LimitSet[], string]>([
    ['with one id on two rows', [{ ...set, rows: [fat, fat] }], 'id-twice'],
    ['with its own id used twice', [set, set], 'set-id-twice'],
    ['replacing nothing', [{ ...set, replaces: 'zero' }], 'replaced-missing zero'],
    [
      'replacing a newer one',
      [
        { ...set, id: 'zero', validFrom: '2027' },
        { ...set, replaces: 'zero' },
      ],
      'replaced-newer zero',
    ],
    [
      'replacing another jurisdiction',
      [
        { ...set, id: 'zero', validFrom: '2020', jurisdiction: 'Canada' },
        { ...set, replaces: 'zero' },
      ],
      'replaced-of-another',
    ],
    ['without its edition', [{ ...set, edition: '' }], 'set-nameless'],
    ['that counts from no day', [{ ...set, validFrom: 'soon' }], 'counts-from-no-date soon'],
    ['that counts from a day there is not', [{ ...set, validFrom: '2026-02-30' }], 'counts-from-no-date 2026-02-30'],
  ])('%s', (_case, sets, because) => {
    expect(faultsOfSets(sets).map((fault) => plainPart(fault.because))).toContain(because);
  });

  test('one of one’s own comes back only when it is sound', () => {
    const own = { id: 'ours', title: 'Ours', edition: '2026', validFrom: '2026-01-01', rows: [fat] };
    expect(ownSet(own)).toEqual({ set: { ...own, jurisdiction: 'own' } });
    expect(ownSet({ ...own, rows: [] })).toEqual({ faults: [{ set: 'ours', because: { code: 'rows-missing' } }] });
    expect(ownSet({ ...own, rows: [withLimit(fat, { min: 2000, max: 1000 })] })).toMatchObject({
      faults: [{ row: fat.id, because: { code: 'least-above-most' } }],
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
        { set: 'ours-2', because: { code: 'edition-called-alike', figures: { edition: '2026-2' } } },
        { set: 'ours-2', because: { code: 'edition-counts-earlier', figures: { from: '2026-03-01', before: '2026-03-02' } } },
      ],
    });
  });

  test('faults name the set and the row', () => {
    expect(faultsOfSet({ ...set, rows: [{ ...fat, title: '' }] })).toEqual([
      { set: 'one', row: fat.id, because: { code: 'title-missing' } },
    ]);
  });
});
