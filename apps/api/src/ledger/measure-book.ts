import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { ownRows, recordTables, type RecordTables } from './record-tables';

/** `added` is the latest line that a record names. */
export type Book = { head: bigint; added: bigint; rows: ReadonlyMap<string, number>; tables: RecordTables };

type Measured = { head: bigint | null; added: bigint | null; rows: Record<string, number> };

/** One statement, so that a concurrent write is in all figures or in none. */
export async function measureBook(tx: Tx, establishmentId: string): Promise<Book> {
  const tables = await recordTables(tx);
  const counts = [...tables.keys()].map(
    (table) =>
      Prisma.sql`
        SELECT ${table}::text AS name, count(*) AS n, max(r.seq) AS latest FROM ${Prisma.raw(`"${table}"`)} r
        WHERE ${ownRows(table, establishmentId)}`,
  );
  const [book] = await tx.$queryRaw<Measured[]>`
    SELECT (SELECT max(seq) FROM ledger_entry WHERE establishment_id = ${establishmentId}::uuid) AS head,
      max(latest) AS added, jsonb_object_agg(name, n) AS rows FROM (${Prisma.join(counts, ' UNION ALL ')}) counted`;
  return {
    head: book?.head ?? 0n,
    added: book?.added ?? 0n,
    rows: new Map(Object.entries(book?.rows ?? {})),
    tables,
  };
}
