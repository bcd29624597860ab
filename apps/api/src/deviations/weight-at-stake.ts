import { massFromGrams } from '@larderbook/haccp';
import type { Tx } from '../platform/database';

/**
 * Femtograms of product that a deviation is about: what went into the lot, or came with the delivery, and is still
 * accounted to it.
 */
export async function weightAtStake(tx: Tx, deviationId: string): Promise<bigint> {
  const [stake] = await tx.$queryRaw<{ grams: string }[]>`
    SELECT (CASE WHEN d.lot_id IS NULL
      THEN coalesce((SELECT grams FROM receipt_now WHERE id = d.receipt_id), 0)
        - coalesce((SELECT sum(grams) FROM removal_now WHERE receipt_id = d.receipt_id), 0)
      ELSE coalesce((SELECT sum(i.trimmed_grams) FROM lot_input_now i WHERE i.lot_id = d.lot_id), 0)
        + coalesce((SELECT sum(w.grams) FROM weighing_now w WHERE w.lot_id = d.lot_id), 0)
        - coalesce((SELECT sum(i.grams) FROM lot_input_now i WHERE i.source_lot_id = d.lot_id), 0)
        - coalesce((SELECT sum(grams) FROM removal_now WHERE lot_id = d.lot_id), 0)
      END - coalesce((SELECT sum(p.grams) FROM disposition p JOIN deviation o ON o.id = p.deviation_id
        WHERE p.decision = 'condemn' AND o.lot_id IS NOT DISTINCT FROM d.lot_id
          AND o.receipt_id IS NOT DISTINCT FROM d.receipt_id), 0))::text AS grams
    FROM deviation d WHERE d.id = ${deviationId}::uuid`;
  const left = massFromGrams(stake?.grams ?? '0');
  return left > 0n ? left : 0n;
}
