import { item } from '@larderbook/contracts';
import type { z } from 'zod';
import { Prisma } from '../generated/prisma/client';
import { rowsNow } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

export type ItemNow = z.output<typeof item>;

type Row = Record<'name' | 'kind', string> &
  Record<'species' | 'substance', string | null> & {
    fractionPercent: Prisma.Decimal | null;
    saltPercent: Prisma.Decimal | null;
    waterPercent: Prisma.Decimal | null;
    allergens: string[];
    receivingLimit: unknown;
  };
const columns = Prisma.sql`now.name, now.kind, now.species, now.substance, now.fraction_percent AS "fractionPercent",
  now.salt_percent AS "saltPercent", now.water_percent AS "waterPercent", now.allergens, now.receiving_limit AS "receivingLimit"`;

/** Keyed by lasting id. A correction counts from the moment it is made. */
export async function itemsNow(tx: Tx, itemIds?: readonly string[]): Promise<Map<string, ItemNow>> {
  const rows = await rowsNow<Row>(tx, 'item', columns, itemIds);
  return new Map(rows.map(({ first, ...row }) => [first, asDescribed(first, row)]));
}

const asDescribed = (itemId: string, row: Row): ItemNow =>
  item.parse({
    itemId,
    name: row.name,
    kind: row.kind,
    species: row.species ?? undefined,
    substance: row.substance ?? undefined,
    fractionPercent: row.fractionPercent?.toNumber(),
    saltPercent: row.saltPercent?.toNumber(),
    waterPercent: row.waterPercent?.toNumber(),
    allergens: row.allergens,
    receivingLimit: row.receivingLimit ?? undefined,
  });
