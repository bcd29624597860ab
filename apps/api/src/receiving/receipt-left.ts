import { massFromGrams } from '@larderbook/haccp';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { itemsNow, type ItemNow } from '../products/items-now';

/** Grams left of the delivery `r`; a refused one leaves nothing. */
export const leftColumn = Prisma.sql`
  CASE r.decision WHEN 'refused' THEN 0 ELSE r.grams
    - coalesce((SELECT sum(i.grams) FROM lot_input_now i
        WHERE i.establishment_id = r.establishment_id AND i.receipt_id = r.id), 0)
    - coalesce((SELECT sum(w.grams) FROM weighing_now w
        WHERE w.establishment_id = r.establishment_id AND w.receipt_id = r.id), 0)
    - coalesce((SELECT sum(m.grams) FROM removal_now m
        WHERE m.establishment_id = r.establishment_id AND m.receipt_id = r.id), 0)
    - coalesce((SELECT sum(p.grams) FROM disposition_now p
        WHERE p.establishment_id = r.establishment_id AND p.receipt_id = r.id
          AND p.decision IN ('condemn', 'return')), 0) END`;

/** Exact femtograms. */
export async function leftOf(tx: Tx, receiptIds: readonly string[]): Promise<Map<string, bigint>> {
  const rows = await tx.$queryRaw<{ id: string; left: string }[]>`
    SELECT r.id, (${leftColumn})::text AS left
    FROM receipt_now r WHERE r.id = ANY(${receiptIds}::uuid[])`;
  return new Map(rows.map(({ id, left }) => [id, massFromGrams(left)]));
}

/** Throws `not-found`. */
export async function receiptLeft(tx: Tx, receiptId: string) {
  const row = await tx.receipt.findFirst({
    where: { id: receiptId },
    select: {
      id: true,
      code: true,
      itemId: true,
      supplierId: true,
      supplierLot: true,
      decision: true,
      grams: true,
      weightUnit: true,
      fractionPercent: true,
      takenAt: true,
    },
  });
  const item = row && (await itemsNow(tx, [row.itemId])).get(row.itemId);
  if (!item) throw new Problem('not-found', told('no-such-delivery'));

  const leftFemto = (await leftOf(tx, [receiptId])).get(receiptId) ?? 0n;
  return { row: { ...row, item, fractionPercent: fractionOf(row, item) }, leftFemto };
}

/** The label of the delivery counts before the item. Percent. */
const fractionOf = (receipt: { fractionPercent: { toNumber(): number } | null }, item: ItemNow): number | undefined =>
  receipt.fractionPercent?.toNumber() ?? item.fractionPercent;
