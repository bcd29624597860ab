import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

/** The tables whose rows carry the line of the ledger that added them. */
export async function recordTables(tx: Tx): Promise<string[]> {
  const found = await tx.$queryRaw<{ name: string }[]>`
    SELECT c.relname::text AS name FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND a.attname = 'seq' AND NOT a.attisdropped
      AND c.relname NOT LIKE 'ledger\\_%' ORDER BY 1`;
  return found.map(({ name }) => name);
}

/** Names the establishment, because row security does not bind the tables' owner, who also verifies. */
export const ownRows = (table: string, establishmentId: string): Prisma.Sql =>
  table === 'establishment' ? Prisma.sql`r.id = ${establishmentId}::uuid` : Prisma.sql`r.establishment_id = ${establishmentId}::uuid`;
