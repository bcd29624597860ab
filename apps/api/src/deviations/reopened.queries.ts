import type { Tx } from '../platform/database';
import { productsHeld } from './held-products.queries';

/** Corrected or voided weights and decisions, also in reworked lots, may leave a closed deviation uncovered. */
export async function reopened(tx: Tx): Promise<string[]> {
  const corrected = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE corrected(product_id, seq) AS (
      SELECT p.id, x.seq FROM (
        SELECT lot_id, receipt_id, source_lot_id, seq FROM lot_input WHERE amends_id IS NOT NULL
        UNION ALL
        SELECT b.lot_id, b.receipt_id, b.source_lot_id, i.seq
          FROM lot_input i JOIN lot_input b ON b.id = i.amends_id
        UNION ALL SELECT lot_id, receipt_id, NULL, seq FROM weighing WHERE amends_id IS NOT NULL
        UNION ALL
        SELECT b.lot_id, b.receipt_id, NULL, w.seq FROM weighing w JOIN weighing b ON b.id = w.amends_id
        UNION ALL SELECT lot_id, receipt_id, NULL, seq FROM removal WHERE amends_id IS NOT NULL
        UNION ALL SELECT lot_id, receipt_id, NULL, seq FROM disposition WHERE amends_id IS NOT NULL
        UNION ALL
        SELECT b.lot_id, b.receipt_id, NULL, p.seq FROM disposition p JOIN disposition b ON b.id = p.amends_id
        UNION ALL SELECT NULL, first_id, NULL, seq FROM receipt WHERE amends_id IS NOT NULL
      ) x, LATERAL (VALUES (x.lot_id), (x.receipt_id), (x.source_lot_id)) AS p(id) WHERE p.id IS NOT NULL
      UNION
      SELECT coalesce(e.source_lot_id, e.receipt_id), c.seq FROM corrected c, LATERAL (
        SELECT i.source_lot_id, i.receipt_id FROM lot_input_now i WHERE i.lot_id = c.product_id
        UNION ALL
        SELECT NULL, w.receipt_id FROM weighing_now w WHERE w.lot_id = c.product_id AND w.receipt_id IS NOT NULL
      ) e
    )
    SELECT DISTINCT d.id FROM corrected c
    JOIN deviation d ON d.lot_id = c.product_id OR d.receipt_id = c.product_id
    JOIN deviation_closing_now k ON k.deviation_id = d.id AND k.seq < c.seq`;
  const held = await productsHeld(
    tx,
    corrected.map(({ id }) => id),
  );
  return [...held].flatMap(([id, { isCovered }]) => (isCovered ? [] : [id]));
}
