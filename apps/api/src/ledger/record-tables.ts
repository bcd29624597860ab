import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

/** The tables whose rows carry the line of the ledger that added them, each with its columns of decimal numbers. */
export type RecordTables = ReadonlyMap<string, ReadonlySet<string>>;

export async function recordTables(tx: Tx): Promise<RecordTables> {
  const found = await tx.$queryRaw<{ name: string; numerics: string[] }[]>`
    SELECT c.relname::text AS name, ARRAY(SELECT n.attname::text FROM pg_attribute n
      WHERE n.attrelid = c.oid AND NOT n.attisdropped AND n.atttypid = 'numeric'::regtype) AS numerics
    FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND a.attname = 'seq' AND NOT a.attisdropped
      AND c.relname NOT LIKE 'ledger\\_%' ORDER BY 1`;
  return new Map(found.map(({ name, numerics }) => [name, new Set(numerics)]));
}

/** Names the establishment, because row security does not bind the tables' owner, who also verifies. */
export const ownRows = (table: string, establishmentId: string): Prisma.Sql =>
  table === 'establishment' ? Prisma.sql`r.id = ${establishmentId}::uuid` : Prisma.sql`r.establishment_id = ${establishmentId}::uuid`;
