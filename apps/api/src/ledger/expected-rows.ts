import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import type { Covered } from './entries';
import type { MovedColumns } from './moved-columns';
import { ownRows, type RecordTables } from './record-tables';

/** What a row has to be now, by the text that added it: in the table and under the names of today. */
export type Expected = { table: string; id: string; seq: number; row: ReadonlyMap<string, string> };

/** A row whose columns were moved apart is expected in each of its tables, also where what was moved is null. */
export function expectedNow({ id, row, table }: Covered, seq: number, moved: MovedColumns): Expected[] {
  const byTable = new Map<string, Map<string, string>>([[table, new Map()]]);
  for (const [column, place] of Object.entries(moved)) if (column.startsWith(`${table}.`)) byTable.set(place.table, new Map());
  for (const [column, value] of Object.entries(row)) {
    const place = moved[`${table}.${column}`] ?? { table, column };
    const there = byTable.get(place.table) ?? new Map<string, string>();
    byTable.set(place.table, there.set(place.column, value));
  }
  return [...byTable].map(([name, columns]) => ({ table: name, id, seq, row: columns }));
}

export type Found = 'as written' | 'altered' | 'gone';
export type LookUp = (expected: Expected) => Found;

type Row = { id: string; seq: bigint; row: Record<string, string> };
const placeOf = ({ table, id }: { table: string; id: string }) => `${table} ${id}`;

/** One statement a table. */
export async function lookUpRows(tx: Tx, establishmentId: string, expected: readonly Expected[], tables: RecordTables): Promise<LookUp> {
  const idsByTable = new Map<string, string[]>([...tables.keys()].map((table) => [table, []]));
  for (const { table, id } of expected) idsByTable.get(table)?.push(id);

  const rows = new Map<string, Row>();
  await tx.$queryRaw`SELECT set_config('timezone', 'UTC', true)`; // texts are of rows printed in UTC
  for (const [table, ids] of idsByTable) {
    if (ids.length === 0) continue;
    const found = await tx.$queryRaw<Row[]>`
      SELECT r.id::text AS id, r.seq, (SELECT coalesce(jsonb_object_agg(key, value), '{}')
        FROM jsonb_each_text(to_jsonb(r) - '{establishment_id,id,seq}'::text[]) WHERE value IS NOT NULL) AS row
      FROM ${Prisma.raw(`"${table}"`)} r WHERE ${ownRows(table, establishmentId)} AND r.id = ANY(${ids}::uuid[])`;
    for (const row of found) rows.set(placeOf({ table, id: row.id }), row);
  }
  return (wanted) => {
    const found = rows.get(placeOf(wanted));
    if (!found) return 'gone';
    return Number(found.seq) === wanted.seq && isSame(found.row, wanted.row, tables.get(wanted.table)) ? 'as written' : 'altered';
  };
}

/** A numeric column that was widened prints more zeros; its value is the same. */
function isSame(row: Record<string, string>, wanted: ReadonlyMap<string, string>, numerics?: ReadonlySet<string>): boolean {
  const names = Object.keys(row);
  if (names.length !== wanted.size) return false;
  return names.every((name) => {
    const [is, was] = [row[name], wanted.get(name)];
    return is === was || (numerics?.has(name) === true && plain(is) === plain(was));
  });
}

const plain = (number: string | undefined) => (number?.includes('.') ? number.replace(/\.?0+$/, '') : number);
