import type { FigureLimit } from '../kinds/figure/figure-limit';
import type { CriticalLimit } from '../limits/limit';
import { readLimit } from './read-limit';
import { rowsOf, type SheetHead, type Table } from './set-file';

type Published = CriticalLimit | FigureLimit;

/** For the code and the starter plans that name limits. */
export const limitsIn = (set: SheetHead, table: Table) => {
  const rows = rowsOf(table);
  return <Kind extends Published['kind']>(kind: Kind, id: string): Extract<Published, { kind: Kind }> => {
    const cells = rows.find((row) => row.id === id && row.kind === kind);
    if (!cells) throw new RangeError(`${set.id} has no limit ${id} of the kind ${kind}`);
    return readLimit(cells, set) as Extract<Published, { kind: Kind }>;
  };
};
