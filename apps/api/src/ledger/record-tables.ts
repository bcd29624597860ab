import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

/** The ledger covers every table with the trigger `note_record`, even where the trigger is switched off. */
export async function recordTables(tx: Tx): Promise<string[]> {
  const found = await tx.$queryRaw<{ name: string }[]>`
    SELECT c.relname::text AS name FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
    WHERE t.tgname = 'note_record' ORDER BY 1`;
  return found.map(({ name }) => name);
}

/** Always names the establishment: the tables' owner also verifies, and row security does not bind it. */
export const ownRows = (table: string, establishmentId: string): Prisma.Sql =>
  table === 'establishment' ? Prisma.sql`r.id = ${establishmentId}::uuid` : Prisma.sql`r.establishment_id = ${establishmentId}::uuid`;
