import type { LimitRow } from './limit-set';
import { readSet } from './read-set';
import type { Cells, SetFile } from './set-file';

/** One row, from an example that nobody has read. */
export const aFileOf = (cells: Cells, set: Partial<SetFile['set']> = {}): SetFile => {
  const all: Cells = {
    id: 'one',
    kind: 'figure',
    of: 'fat',
    figure: '≤ 30 %',
    purpose: 'keeping',
    work: 'example',
    where: '1',
    known: 'from memory',
    ...cells,
  };
  return {
    set: {
      id: 'example-1',
      jurisdiction: 'own',
      edition: '1',
      validFrom: '2026',
      remarks: [],
      works: { example: { citation: 'an example', edition: '1', validFrom: '2026', force: 'guide' } },
      ...set,
    },
    only: { columns: Object.keys(all), rows: [Object.values(all)] },
    words: { title: 'An example', rows: { [all.id as string]: { title: 'One' } } },
  };
};

/** `more` says what a cell cannot. */
export const aRow = (cells: Cells = {}, more: Partial<LimitRow> = {}): LimitRow => ({
  ...(readSet(aFileOf(cells)).rows[0] as LimitRow),
  ...more,
});
