import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';

/** Tables that describe what may be corrected later: each correction is a new row that amends the one before. */
export type Described = 'supplier' | 'item' | 'product' | 'customer';

/**
 * What is described keeps the id of its first row for good: formulas, receipts and lots point at that one.
 * Maps each such id to the id of the row that counts now. Without `ids`, all of them.
 */
export async function rowsThatCount(tx: Tx, table: Described, ids?: readonly string[]): Promise<Map<string, string>> {
  const name = Prisma.raw(`"${table}"`);
  const chosen = ids ? Prisma.sql`AND id = ANY(${ids}::uuid[])` : Prisma.empty;
  const rows = await tx.$queryRaw<{ first: string; counts: string }[]>`
    WITH RECURSIVE chain(first, id) AS (
      SELECT id, id FROM ${name} WHERE amends_id IS NULL ${chosen}
      UNION ALL
      SELECT chain.first, later.id FROM chain JOIN ${name} later ON later.amends_id = chain.id
    )
    SELECT chain.first, chain.id AS counts FROM chain
    WHERE NOT EXISTS (SELECT FROM ${name} later WHERE later.amends_id = chain.id)`;
  return new Map(rows.map(({ first, counts }) => [first, counts]));
}

/**
 * Where a correction of `amends` goes: the thing it describes, and the row it has to amend.
 * Throws `not-found`, or `already-amended` when `amends` names a correction that has been corrected itself.
 */
export async function rowToAmend(
  tx: Tx,
  table: Described,
  amends: string,
): Promise<{ first: string; amendsId: string }> {
  const counting = await rowsThatCount(tx, table);
  const amendsId = counting.get(amends);
  if (amendsId) return { first: amends, amendsId };

  const [first] = [...counting].find(([, counts]) => counts === amends) ?? [];
  if (first) return { first, amendsId: amends };
  const name = Prisma.raw(`"${table}"`);
  const [known] = await tx.$queryRaw<object[]>`SELECT id FROM ${name} WHERE id = ${amends}::uuid`;
  throw new Problem(known ? 'already-amended' : 'not-found');
}
