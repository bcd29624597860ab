import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

/** The tables whose rows the ledger covers: those on which the database notes every row, switched off or not. */
export async function recordTables(tx: Tx): Promise<string[]> {
  const found = await tx.$queryRaw<{ name: string }[]>`
    SELECT c.relname::text AS name FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
    WHERE t.tgname = 'note_record' ORDER BY 1`;
  return found.map(({ name }) => name);
}

/** The rows `r` of one establishment. Always named: the owner of the tables, who verifies too, is over row security. */
export const ownRows = (table: string, establishmentId: string): Prisma.Sql =>
  table === 'establishment' ? Prisma.sql`r.id = ${establishmentId}::uuid` : Prisma.sql`r.establishment_id = ${establishmentId}::uuid`;
