import type { LimitCondition } from '../limits/limit-condition';
import type { Condition } from './condition';
import type { Force, Jurisdiction, Known, LimitRow, LimitSet, Purpose } from './limit-set';
import type { ProductClass } from './product-class';
import { exactly, matched, readTemperature } from './read-cell';
import { readLimit } from './read-limit';
import {
  cellOf,
  listOf,
  rowsOf,
  type Asked,
  type Cells,
  type SetFile,
  type SheetFile,
  type Table,
  type TableAsIn,
  type Work,
} from './set-file';

/** @param others the sets that tables are taken from. Throws a RangeError where a row is incomplete. */
export function readSet(file: SetFile, others: readonly SheetFile[] = []): LimitSet {
  const { set, words, ...tables } = file;
  const { id, jurisdiction, edition, validFrom, replaces, isPartial } = set;
  return {
    id,
    jurisdiction: jurisdiction as Jurisdiction,
    title: words.title,
    edition,
    validFrom,
    replaces,
    isPartial,
    rows: Object.entries(tables as Record<string, Table | TableAsIn>).flatMap(([name, table]) =>
      'as in' in table ? rowsAsIn(name, table, file, others) : rowsOf(table).map((cells) => readRow(cells, file)),
    ),
  };
}

function rowsAsIn(name: string, { 'as in': id, but }: TableAsIn, { set }: SheetFile, others: readonly SheetFile[]): LimitRow[] {
  const other = others.find((one) => one.set.id === id);
  if (!other?.[name]) throw new RangeError(`${set.id} takes the table ${name} of ${id}, which is not there`);
  const works = { ...other.set.works, ...set.works };
  const read = { ...other, set: { ...other.set, works } };
  return rowsOf(other[name] as Table).map((cells) => readRow({ ...cells, ...but }, read));
}

function readRow(cells: Cells, { set, words }: SheetFile): LimitRow {
  const id = cellOf(cells, 'id');
  const said = words.rows?.[id];
  if (!said) throw new RangeError(`The row ${id} of ${set.id} has no title`);
  const limit = readLimit(cells, set, said.statement);
  const work = set.works?.[cellOf(cells, 'work')] as Work;
  const odd = listOf(cells, 'odd');
  return {
    id,
    title: said.title,
    purpose: cellOf(cells, 'purpose') as Purpose,
    limit,
    paragraph: cellOf(cells, 'where'),
    force: (cellOf(cells, 'force') || work.force) as Force,
    known: cellOf(cells, 'known') as Known,
    validFrom: cellOf(cells, 'from') || work.validFrom,
    validUntil: cellOf(cells, 'until') || undefined,
    conditions: conditionsOf(cells, set, words),
    isDefault: cellOf(cells, 'default') === 'yes' || undefined,
    printedOdd: odd.length > 0 ? odd.map(readTemperature) : undefined,
    isPartial: cellOf(cells, 'partly read') === 'yes' || undefined,
    note: said.note,
  };
}

function conditionsOf(cells: Cells, { groups = {}, asks = {} }: SheetFile['set'], words: SheetFile['words']): Condition[] {
  const places = listOf(cells, 'place');
  const products = listOf(cells, 'product').flatMap((name) => groups[name] ?? [name]) as ProductClass[];
  return [
    ...(places.length > 0 ? [{ kind: 'place' as const, among: places }] : []),
    ...(products.length > 0 ? [{ kind: 'product' as const, among: products }] : []),
    ...listOf(cells, 'asks').map((name) => conditionOf(asks[name] as Asked, words.asks?.[name])),
  ];
}

/** "100 ppm", kept in thousandths. */
function conditionOf({ kind, least, ...rest }: Asked, says: string | undefined): LimitCondition {
  if (least === undefined) return { kind, says } as LimitCondition;
  return { kind, least: exactly(matched(/^([\d.]+) (?:ppm|%)$/, least)[1] as string, 3), ...rest } as LimitCondition;
}
