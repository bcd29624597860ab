import { Prisma } from '../generated/prisma/client';
import type { Described } from '../ledger/rows-that-count';

/** An old label is searched by its old name, which `ever` holds too. */
export const namesEver = (table: Described): Prisma.Sql => Prisma.sql`
  SELECT chain.first AS id, (array_agg(row.name ORDER BY chain.depth DESC))[1] AS now, string_agg(row.name, ' ') AS ever
  FROM (
    WITH RECURSIVE chain(first, id, depth) AS (
      SELECT id, id, 0 FROM ${Prisma.raw(`"${table}"`)} WHERE amends_id IS NULL
      UNION ALL
      SELECT chain.first, later.id, chain.depth + 1
        FROM chain JOIN ${Prisma.raw(`"${table}"`)} later ON later.amends_id = chain.id
    ) SELECT * FROM chain
  ) chain JOIN ${Prisma.raw(`"${table}"`)} row ON row.id = chain.id
  GROUP BY chain.first`;
