import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

/** The ledger covers tables with the trigger `note_record`, even where it is switched off. */
export async function recordTables(tx: Tx): Promise<string[]> {
  const found = await tx.$queryRaw<{ name: string }[]>`
    SELECT c.relname::text AS name FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid
    WHERE t.tgname = 'note_record' ORDER BY 1`;
  return found.map(({ name }) => name);
}

/** Names the establishment, because row security does not bind the tables' owner, who also verifies. */
export const ownRows = (table: string, establishmentId: string): Prisma.Sql =>
  table === 'establishment' ? Prisma.sql`r.id = ${establishmentId}::uuid` : Prisma.sql`r.establishment_id = ${establishmentId}::uuid`;
