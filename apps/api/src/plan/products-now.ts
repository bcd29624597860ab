import { productFields } from '@larderbook/contracts';
import { z } from 'zod';
import { rowsThatCount } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

const productNow = productFields.extend({ productId: z.string() });
export type ProductNow = z.output<typeof productNow>;

/** Products as they are described now, by their lasting id. */
export async function productsNow(tx: Tx, productIds?: readonly string[]): Promise<Map<string, ProductNow>> {
  const counting = await rowsThatCount(tx, 'product', productIds);
  const rows = await tx.product.findMany({ where: { id: { in: [...counting.values()] } } });
  const byRow = new Map(rows.map((row) => [row.id, row]));

  return new Map(
    [...counting].flatMap(([productId, rowId]) => {
      const row = byRow.get(rowId);
      return row ? [[productId, productNow.parse({ ...row, productId })] as const] : [];
    }),
  );
}
