import { item } from '@larderbook/contracts';
import type { z } from 'zod';
import { rowsThatCount } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

export type ItemNow = z.output<typeof item>;

/** Items as they are described now, by their lasting id. What a correction changed counts from then on. */
export async function itemsNow(tx: Tx, itemIds?: readonly string[]): Promise<Map<string, ItemNow>> {
  const counting = await rowsThatCount(tx, 'item', itemIds);
  const rows = await tx.item.findMany({ where: { id: { in: [...counting.values()] } } });
  const byRow = new Map(rows.map((row) => [row.id, row]));

  return new Map(
    [...counting].flatMap(([itemId, rowId]) => {
      const row = byRow.get(rowId);
      return row ? [[itemId, described(itemId, row)] as const] : [];
    }),
  );
}

type Row = Awaited<ReturnType<Tx['item']['findMany']>>[number];

const described = (itemId: string, row: Row): ItemNow =>
  item.parse({
    itemId,
    name: row.name,
    kind: row.kind,
    species: row.species ?? undefined,
    substance: row.substance ?? undefined,
    fractionPercent: row.fractionPercent?.toNumber(),
    allergens: row.allergens,
    receivingLimit: row.receivingLimit ?? undefined,
  });
