import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import type { Covered, ListedEntry } from './entries';
import { ownRows, recordTables } from './record-tables';

type Place = Pick<Covered, 'table' | 'id'>;
const placeOf = ({ table, id }: Place) => `${table} ${id}`;

/** The row as it stands now, in the text of its digest; undefined when gone. */
export type CanonicalRows = (row: Place) => string | undefined;

export async function canonicalRows(tx: Tx, establishmentId: string, entries: ListedEntry[]): Promise<CanonicalRows> {
  const idsByTable = new Map<string, string[]>((await recordTables(tx)).map((table) => [table, []]));
  for (const { table, id } of entries.flatMap(({ covers }) => covers)) idsByTable.get(table)?.push(id);

  const rows = new Map<string, string>();
  await tx.$queryRaw`SELECT set_config('timezone', 'UTC', true)`; // digests were taken of rows printed in UTC
  for (const [table, ids] of idsByTable) {
    if (ids.length === 0) continue;
    const found = await tx.$queryRaw<{ id: string; said: string }[]>`
      SELECT r.id::text AS id, canonical_row(to_jsonb(r)) AS said FROM ${Prisma.raw(`"${table}"`)} r
      WHERE ${ownRows(table, establishmentId)} AND r.id = ANY(${ids}::uuid[])`;
    for (const { id, said } of found) rows.set(placeOf({ table, id }), said);
  }
  return (row) => rows.get(placeOf(row));
}
