import type { Tx } from '../platform/database';
import { productsHeld } from './held-products.queries';

/** Closed deviations whose decisions no longer cover what they concern, because a weight was corrected or voided since. */
export async function reopened(tx: Tx): Promise<string[]> {
  const corrected = await tx.$queryRaw<{ id: string }[]>`
    SELECT d.id FROM deviation d JOIN deviation_closing c ON c.deviation_id = d.id
    WHERE EXISTS (SELECT FROM lot_input i WHERE i.amends_id IS NOT NULL AND i.recorded_at >= c.recorded_at
        AND (i.lot_id = d.lot_id OR i.source_lot_id = d.lot_id OR i.receipt_id = d.receipt_id))
      OR EXISTS (SELECT FROM weighing w WHERE w.amends_id IS NOT NULL AND w.recorded_at >= c.recorded_at
        AND (w.lot_id = d.lot_id OR w.receipt_id = d.receipt_id))
      OR EXISTS (SELECT FROM removal m WHERE m.amends_id IS NOT NULL AND m.recorded_at >= c.recorded_at
        AND (m.lot_id = d.lot_id OR m.receipt_id = d.receipt_id))
      OR EXISTS (SELECT FROM receipt r WHERE r.amends_id IS NOT NULL AND r.recorded_at >= c.recorded_at
        AND r.first_id = d.receipt_id)`;
  const held = await productsHeld(
    tx,
    corrected.map(({ id }) => id),
  );
  return [...held].flatMap(([id, { isCovered }]) => (isCovered ? [] : [id]));
}
