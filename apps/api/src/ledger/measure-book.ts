import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { ownRows, recordTables } from './record-tables';

export type Book = { head: bigint; acknowledged: bigint; rows: Map<string, number> };

/** One statement, so that a concurrent write is in all figures or in none. */
export async function measureBook(tx: Tx, establishmentId: string): Promise<Book> {
  const tables = await recordTables(tx);
  const counts = tables.map(
    (table) =>
      Prisma.sql`
        SELECT ${table}::text AS name, count(*) AS n FROM ${Prisma.raw(`"${table}"`)} r
        WHERE ${ownRows(table, establishmentId)}`,
  );
  const [book] = await tx.$queryRaw<{ head: bigint | null; acknowledged: bigint | null; rows: Record<string, number> }[]>`
    SELECT (SELECT max(seq) FROM ledger_entry WHERE establishment_id = ${establishmentId}::uuid) AS head,
           (SELECT max(seq) FROM acknowledgement WHERE establishment_id = ${establishmentId}::uuid) AS acknowledged,
           (SELECT jsonb_object_agg(name, n) FROM (${Prisma.join(counts, ' UNION ALL ')}) counted) AS rows`;
  return {
    head: book?.head ?? 0n,
    acknowledged: book?.acknowledged ?? 0n,
    rows: new Map(Object.entries(book?.rows ?? {})),
  };
}

/** `after` is the last line before the row's own time of recording. */
export async function firstUncovered(
  tx: Tx,
  establishmentId: string,
  table: string,
): Promise<{ id: string; after: bigint | null } | undefined> {
  const [row] = await tx.$queryRaw<{ id: string; after: bigint | null }[]>`
    SELECT r.id::text AS id, (SELECT max(e.seq) FROM ledger_entry e WHERE e.establishment_id = ${establishmentId}::uuid
      AND e.at <= coalesce((to_jsonb(r)->>'recorded_at')::timestamptz, 'infinity')) AS after
    FROM ${Prisma.raw(`"${table}"`)} r WHERE ${ownRows(table, establishmentId)} AND r.id NOT IN (
      SELECT (covered->>'id')::uuid FROM ledger_entry e, jsonb_array_elements(e.records::jsonb) covered
      WHERE e.establishment_id = ${establishmentId}::uuid AND covered->>'table' = ${table})
    ORDER BY r.id LIMIT 1`;
  return row;
}
