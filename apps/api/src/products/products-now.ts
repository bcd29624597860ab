import { productFields } from '@larderbook/contracts';
import { z } from 'zod';
import { Prisma } from '../generated/prisma/client';
import { rowsNow } from '../ledger/rows-that-count';
import type { Tx } from '../platform/database';

const productNow = productFields.extend({ productId: z.string() });
export type ProductNow = z.output<typeof productNow>;

const columns = Prisma.sql`now.name, now.code, now.process, now.species,
  now.product_class AS "productClass", now.storage, now.use_by_days AS "useByDays"`;

/** Keyed by lasting id. */
export async function productsNow(tx: Tx, productIds?: readonly string[]): Promise<Map<string, ProductNow>> {
  const rows = await rowsNow<{ productClass: string | null }>(tx, 'product', columns, productIds);
  const read = ({ first, productClass, ...row }: (typeof rows)[number]) =>
    productNow.parse({ ...row, productId: first, productClass: productClass ?? undefined });
  return new Map(rows.map((row) => [row.first, read(row)]));
}
