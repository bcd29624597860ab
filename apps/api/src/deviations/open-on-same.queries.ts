import type { Tx } from '../platform/database';
import { productsHeld } from './held-products.queries';

type OpenOne = { deviationId: string; number: number; undecided: bigint };
export type OpenOnSame = (productId: string) => OpenOne[];

/** Includes deviations that came with a delivery or a reworked lot. */
export async function openOnSame(tx: Tx, productIds: readonly string[]): Promise<OpenOnSame> {
  const rows = await tx.$queryRaw<{ productId: string; deviationId: string; number: number; isClosed: boolean }[]>`
    WITH RECURSIVE behind(product_id, part_id) AS (
      SELECT id, id FROM unnest(${productIds}::uuid[]) AS id
      UNION
      SELECT b.product_id, coalesce(e.source_lot_id, e.receipt_id) FROM behind b, LATERAL (
        SELECT i.source_lot_id, i.receipt_id FROM lot_input_now i WHERE i.lot_id = b.part_id
        UNION ALL
        SELECT NULL, w.receipt_id FROM weighing_now w WHERE w.lot_id = b.part_id AND w.receipt_id IS NOT NULL
      ) e
    ), standing AS (
      SELECT b.product_id, d.id, d.number FROM behind b JOIN deviation d ON d.lot_id = b.part_id
      UNION
      SELECT b.product_id, d.id, d.number FROM behind b JOIN deviation d ON d.receipt_id = b.part_id
    )
    SELECT product_id AS "productId", id AS "deviationId", number,
      EXISTS (SELECT FROM deviation_closing_now c WHERE c.deviation_id = standing.id) AS "isClosed"
    FROM standing ORDER BY number`;
  const held = await productsHeld(tx, [...new Set(rows.map(({ deviationId }) => deviationId))]);
  return (productId) =>
    rows
      .filter((row) => row.productId === productId)
      .flatMap(({ deviationId, number, isClosed }) => {
        const concerned = held.get(deviationId);
        if (isClosed && concerned?.isCovered) return [];
        const product = concerned?.products.find(({ id }) => id === productId);
        return product && product.undecided > 0n ? [{ deviationId, number, undecided: product.undecided }] : [];
      });
}
