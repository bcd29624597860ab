import { describe, expect, test } from 'vitest';
import { defaultsOf, limitSets, waysKnown, type LimitRow, type LimitSet } from '@larderbook/haccp';
import { labelsAsRead, tableRowsAsRead } from './labels-as-read';

const words = (text: string): string[] => text.split(/\s+/).filter(Boolean);
const byName = (one: string, other: string) => (one < other ? -1 : 1);

/** Every label of a set in the order of the ids, as carried and as written in the list. */
const carriedIn = ({ rows }: LimitSet) => rows.map(({ id, known }) => `${id}: ${known}`).toSorted(byName);
const writtenFor = (set: string) =>
  (labelsAsRead[set] ?? [])
    .flatMap((labels) => waysKnown.flatMap((known) => words(labels[known] ?? '').map((id) => `${id}: ${known}`)))
    .toSorted(byName);

describe('how each figure is known, against the written list', () => {
  test.each(limitSets.map((set) => [set.id, set] as const))('%s', (id, set) => {
    expect(carriedIn(set)).toEqual(writtenFor(id));
  });

  test('no set stands in the list alone', () => {
    expect(Object.keys(labelsAsRead).toSorted(byName)).toEqual(limitSets.map(({ id }) => id).toSorted(byName));
  });

  test.each(limitSets.map((set) => [set.id, set] as const))('%s: only what was read is confirmed or offered first', (_id, set) => {
    for (const { id, known, limit } of set.rows) expect([id, limit.source.confirmed]).toEqual([id, known === 'read in the source']);
    expect(defaultsOf(set).every(({ known }) => known === 'read in the source')).toBe(true);
  });
});

describe('the rows of each table under its label, against the written list', () => {
  const listed = new Map(
    tableRowsAsRead.flatMap(([rows, tables]) =>
      words(tables)
        .flatMap(withColumns)
        .map((table) => [table, degreesOf(rows)]),
    ),
  );
  const tables = limitSets.flatMap(({ id: set, rows }) => rows.filter(isTable).map((row) => [`${set}/${row.id}`, row] as const));
  test.each(tables)('%s', (name, row) => {
    expect(temperaturesOf(row)).toEqual(listed.get(name));
  });
  test('no table stands in the list alone', () => {
    expect([...listed.keys()].toSorted(byName)).toEqual(tables.map(([name]) => name).toSorted(byName));
  });
});

const isTable = ({ limit }: LimitRow): boolean => limit.kind === 'dwell' && limit.rows.length > 1;

const temperaturesOf = ({ limit }: LimitRow): string[] =>
  limit.kind === 'dwell'
    ? limit.rows.map(({ at }) => (at['°F'] === undefined ? `${(at['°C'] ?? NaN) / 100} °C` : `${at['°F'] / 100} °F`))
    : [];

/** `*` stands for the twelve columns of fat. */
const withColumns = (table: string): string[] =>
  table.includes('*') ? Array.from({ length: 12 }, (_, i) => table.replace('*', `${i + 1}`)) : [table];

function degreesOf(rows: string): string[] {
  const [unit, ...figures] = words(rows).toReversed();
  return figures.toReversed().flatMap((figure) => {
    const [least, most = least] = figure.split('..').map(Number);
    const count = Math.round(Number(most) - Number(least)) + 1;
    return Array.from({ length: count }, (_, i) => `${Number(least) + i} ${unit}`);
  });
}
