import { figureOf, limitSets, type LimitRow, type LimitSet } from '@larderbook/haccp';

export type PrintedRow = { set: LimitSet; row: LimitRow };

let known: Map<string, PrintedRow[]> | undefined;

/** Empty for a figure of one's own. */
export function printedWhere(limit: LimitRow['limit']): PrintedRow[] {
  known ??= byFigure();
  return known.get(figureOf(limit)) ?? [];
}

function byFigure(): Map<string, PrintedRow[]> {
  const found = new Map<string, PrintedRow[]>();
  for (const set of limitSets)
    for (const row of set.rows) {
      const figure = figureOf(row.limit);
      found.set(figure, [...(found.get(figure) ?? []), { set, row }]);
    }
  return found;
}
