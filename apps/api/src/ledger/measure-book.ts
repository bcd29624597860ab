import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { ownRows, recordTables } from './record-tables';
import type { Numerics } from './rows-now';

/** `added` is the latest line that a record names. */
export type Book = { head: bigint; added: bigint; rows: ReadonlyMap<string, number>; tables: ReadonlyMap<string, Numerics> };

type Measured = { head: bigint | null; added: bigint | null; rows: Record<string, number> };

/** One statement, so that a concurrent write is in all figures or in none. */
export async function measureBook(tx: Tx, establishmentId: string): Promise<Book> {
  const names = await recordTables(tx);
  const counts = names.map(
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
    tables: await numericsOf(tx, names),
  };
}

async function numericsOf(tx: Tx, tables: readonly string[]): Promise<ReadonlyMap<string, Numerics>> {
  const found = await tx.$queryRaw<{ name: string; numerics: string[] }[]>`
    SELECT t.name, ARRAY(SELECT attname::text FROM pg_attribute WHERE attrelid = format('%I', t.name)::regclass AND NOT attisdropped
      AND atttypid = 'numeric'::regtype) AS numerics FROM unnest(${tables}::text[]) AS t (name)`;
  return new Map(found.map(({ name, numerics }) => [name, new Set(numerics)]));
}
