import { readFileSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { limitSets } from '@larderbook/haccp';
import canada from '../../packages/haccp/src/limit-sets/published/canada-2026.json';
import tables from '../../packages/haccp/src/limit-sets/published/fsis-cooking-tables.json';
import type { SheetFile, Table } from '../../packages/haccp/src/limit-sets/set-file';
import { faultsOfFile, faultsOfHolds, inLine, keysTwice } from './set-file-schema';

const folder = new URL('../../packages/haccp/src/limit-sets/published/', import.meta.url);
const textOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
const sheets = names.filter((name) => name !== 'fsis-cooking-tables.json');

test.each(sheets)('%s is written as the sets are written', (name) => {
  const file = JSON.parse(textOf(name)) as SheetFile;
  expect(faultsOfFile(file)).toEqual([]);
  expect(`${file.set.id}.json`).toBe(name);
});

test.each(names)('%s has no key twice', (name) => expect(keysTwice(textOf(name))).toEqual([]));

/** `vitest -u` puts them so. */
test.each(names)('%s has its cells under one another', async (name) => {
  await expect(inLine(textOf(name))).toMatchFileSnapshot(fileURLToPath(new URL(name, folder)));
});

test('cells are put under one another, and nothing else is changed', () => {
  const [ragged, straight] = [
    '  "columns":\n    ["id", "figure"],\n  "rows": [\n    ["cold", "≤ 4 °C"],\n    ["a", ""]\n  ]',
    '  "columns":\n    ["id",   "figure"],\n  "rows": [\n    ["cold", "≤ 4 °C"],\n    ["a",    ""]\n  ]',
  ];
  expect(inLine(ragged)).toBe(straight);
  expect(inLine(`${ragged}\n${ragged}`)).toBe(`${straight}\n${straight}`);
});

test('the cooking tables get hotter from row to row and never longer', () => {
  const { remarks, ...printed } = tables;
  expect(remarks.length).toBeGreaterThan(0);
  expect(Object.entries(printed).flatMap(([name, one]) => faultsOfHolds(name, one))).toEqual([]);
});

test('every file of a set is read, and every set has a file', () => {
  const ofSets = sheets.filter((name) => name !== 'common-practice.json');
  expect(limitSets.map(({ id }) => `${id}.json`).sort()).toEqual(ofSets.sort());
});

describe('a file is refused', () => {
  const holding: Table = canada.holding;
  /** Canada’s, with the cell of its first holding row put otherwise. */
  const withCell = (column: string, cell: string): SheetFile => ({
    ...canada,
    holding: {
      ...holding,
      each: column === 'kind' ? { kind: cell } : holding.each,
      rows: holding.rows.map((row, index) => (index > 0 ? row : row.map((own, at) => (holding.columns[at] === column ? cell : own)))),
    },
  });
  const withSet = (more: object): SheetFile => ({ ...canada, set: { ...canada.set, ...more } });
  const withTable = (more: object): SheetFile => ({ ...canada, holding: { ...holding, ...more } });
  const holds = canada.set.holds['cooked-meat-6.5-log'];
  const withHolds = (rows: string[][]) => withSet({ holds: { 'cooked-meat-6.5-log': { ...holds, rows } } });

  test.each<[string, SheetFile, RegExp]>([
    ['with a field that there is not', withSet({ colour: 'red' }), /colour/],
    ['with a column that there is not', withTable({ columns: holding.columns.map((one) => (one === 'where' ? 'page' : one)) }), /page/],
    ['with a column twice', withTable({ columns: [...holding.columns.slice(1), 'id'], each: { id: 'x' } }), /id is there twice/],
    ['with a row too short', withTable({ rows: [...holding.rows, ['short']] }), /short has not a cell in each column/],
    ['with an id in words', withCell('id', 'Cold holding'), /^Cold holding: id/],
    ['with one id on two rows', withTable({ rows: [...holding.rows, holding.rows[0]] }), /cold-holding is there twice/],
    ['with a unit that there is not', withCell('figure', '≤ 277 K'), /^cold-holding: figure/],
    ['with a figure that lost its sign', withCell('figure', '4 °C'), /^cold-holding: figure/],
    ['with a figure that lost its unit', withCell('figure', '≤ 4'), /^cold-holding: figure/],
    ['with a figure padded with noughts', withCell('figure', '≤ 4.0 °C'), /^cold-holding: figure/],
    ['with a kind that there is not', withCell('kind', 'guess'), /^cold-holding: kind/],
    ['with a way of knowing that there is not', withCell('known', 'surely'), /^cold-holding: known/],
    ['with a purpose that there is not', withCell('purpose', 'luck'), /^cold-holding: purpose/],
    ['without where it stands', withCell('where', ''), /^cold-holding: where/],
    ['with a work that there is not', withCell('work', 'hearsay'), /there is no work hearsay/],
    ['with a place that there is not', withCell('place', 'Atlantis'), /there is no place Atlantis/],
    [
      'with a condition that there is not',
      { ...canada, cooking: { ...canada.cooking, each: { ...canada.cooking.each, asks: 'luck' } } },
      /there is no condition luck/,
    ],
    [
      'with a product that there is not',
      {
        ...canada,
        curing: { ...canada.curing, rows: canada.curing.rows.map((row) => row.map((cell) => (cell === 'bacon' ? 'soap' : cell))) },
      },
      /there is no product soap/,
    ],
    [
      'with a work that no row names',
      withSet({ works: { ...canada.set.works, idle: canada.set.works['health unit'] } }),
      /no row names the work idle/,
    ],
    [
      'with a group that no row names',
      withSet({ groups: { ...canada.set.groups, idle: ['jerky', 'patties'] } }),
      /no row names the group idle/,
    ],
    ['with a table that no row names', withSet({ holds: { ...canada.set.holds, idle: holds } }), /no row names the table idle/],
    [
      'with a condition that no row names',
      withSet({ asks: { idle: { kind: 'nitrite', per: 'batch', least: '1 ppm' } } }),
      /no row names the condition idle/,
    ],
    ['with a least in another unit', withSet({ asks: { idle: { kind: 'nitrite', per: 'batch', least: '1 %' } } }), /least/],
    ['with a sentence that is not there', withSet({ asks: { idle: { kind: 'statement' } } }), /the condition idle has no words/],
    ['with a row without words', { ...canada, words: { title: 'Canada' } }, /the row cold-holding has no words/],
    [
      'with words for no row',
      { ...canada, words: { ...canada.words, rows: { ...canada.words.rows, gone: { title: 'Gone' } } } },
      /words for a row gone/,
    ],
    [
      'with a statement beside a figure',
      { ...canada, words: { ...canada.words, rows: { ...canada.words.rows, 'cold-holding': { title: 'x', statement: 'It is cold.' } } } },
      /belongs to an attestation/,
    ],
    ['with rows of a table out of order', withHolds([...holds.rows].reverse()), /is not hotter than the row before/],
    [
      'with a hotter row that takes longer',
      withHolds([
        ['60', '5 min'],
        ['61', '301 s'],
      ]),
      /301 s is longer than in the colder row before/,
    ],
    ['with a time that is none', withHolds([['60', 'soon']]), /“soon” is no time/],
    ['with a temperature that is none', withHolds([['warm', '5 min']]), /“warm” is no temperature in °C/],
  ])('%s', (_case, file, because) => {
    expect(faultsOfFile(file)).toContainEqual(expect.stringMatching(because));
  });

  test('with a key twice in one object, and not in two', () => {
    expect(keysTwice('{\n  "a": {\n    "x": 1\n  },\n  "b": {\n    "x": 2,\n    "x": 3\n  },\n  "a": 4\n}')).toEqual(['x', 'a']);
  });
});
