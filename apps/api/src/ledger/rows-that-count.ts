import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';

/** Each correction is a new row that amends the one before. */
const described = ['supplier', 'item', 'product', 'customer'] as const;
export type Described = (typeof described)[number];

/** Formulas, receipts and lots keep the id of the `first` row; `now` counts. Without `ids`, all. */
export async function rowsNow<Row>(
  tx: Tx,
  table: Described,
  columns: Prisma.Sql,
  ids?: readonly string[],
): Promise<(Row & { first: string })[]> {
  return ids?.length === 0 ? [] : tx.$queryRaw`${selectNow(table, columns, ids)}`;
}

export async function namesNow(tx: Tx, wanted: Partial<Record<Described, readonly string[]>>): Promise<ReadonlyMap<string, string>> {
  const parts = described.flatMap((table) => {
    const ids = wanted[table] ?? [];
    return ids.length > 0 ? [Prisma.sql`(${selectNow(table, Prisma.sql`now.name`, ids)})`] : [];
  });
  if (parts.length === 0) return new Map();
  const rows = await tx.$queryRaw<{ first: string; name: string }[]>`${Prisma.join(parts, ' UNION ALL ')}`;
  return new Map(rows.map(({ first, name }) => [first, name]));
}

/** From lasting id to the id of the row that counts. Without `ids`, all. */
async function rowsThatCount(tx: Tx, table: Described, ids?: readonly string[]): Promise<Map<string, string>> {
  const rows = await rowsNow<{ counts: string }>(tx, table, Prisma.sql`now.id AS counts`, ids);
  return new Map(rows.map(({ first, counts }) => [first, counts]));
}

function selectNow(table: Described, columns: Prisma.Sql, ids?: readonly string[]): Prisma.Sql {
  const name = Prisma.raw(`"${table}"`);
  const chosen = ids ? Prisma.sql`AND id = ANY(${ids}::uuid[])` : Prisma.empty;
  return Prisma.sql`
    WITH RECURSIVE chain(first, id) AS (
      SELECT id, id FROM ${name} WHERE amends_id IS NULL ${chosen}
      UNION ALL
      SELECT chain.first, later.id FROM chain JOIN ${name} later ON later.amends_id = chain.id
    )
    SELECT chain.first, ${columns} FROM chain JOIN ${name} now ON now.id = chain.id
    WHERE NOT EXISTS (SELECT FROM ${name} later WHERE later.amends_id = chain.id)`;
}

/** Throws `not-found`, or `already-amended` when `amends` is a correction that was corrected itself. */
export async function rowToAmend(tx: Tx, table: Described, amends: string): Promise<{ first: string; amendsId: string }> {
  const counting = await rowsThatCount(tx, table);
  const amendsId = counting.get(amends);
  if (amendsId) return { first: amends, amendsId };

  const [first] = [...counting].find(([, counts]) => counts === amends) ?? [];
  if (first) return { first, amendsId: amends };
  const name = Prisma.raw(`"${table}"`);
  const [known] = await tx.$queryRaw<object[]>`SELECT id FROM ${name} WHERE id = ${amends}::uuid`;
  throw new Problem(known ? 'already-amended' : 'not-found');
}
