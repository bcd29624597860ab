import type { Tx } from '../platform/database';

/**
 * Of these deviations, the ones whose product had left before they were opened: a possible recall. Product of a lot is
 * also in the lots it was reworked into; product of a delivery is in every lot made from it.
 */
export async function shippedAlready(tx: Tx, deviationIds: readonly string[]): Promise<ReadonlySet<string>> {
  const found = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE chosen AS (
      SELECT id, lot_id, receipt_id, recorded_at FROM deviation WHERE id = ANY(${deviationIds}::uuid[])
    ), reached(deviation_id, lot_id) AS (
      SELECT id, lot_id FROM chosen WHERE lot_id IS NOT NULL
      UNION
      SELECT c.id, i.lot_id FROM chosen c JOIN lot_input_now i ON i.receipt_id = c.receipt_id
      UNION
      SELECT c.id, w.lot_id FROM chosen c JOIN weighing_now w ON w.receipt_id = c.receipt_id
      UNION
      SELECT r.deviation_id, i.lot_id FROM reached r JOIN lot_input_now i ON i.source_lot_id = r.lot_id
    )
    SELECT DISTINCT c.id FROM chosen c
    JOIN reached r ON r.deviation_id = c.id
    JOIN packing_now p ON p.lot_id = r.lot_id
    JOIN shipment_line_now l ON l.packing_id = p.id
    JOIN shipment_now s ON s.id = l.shipment_id AND s.first_recorded_at <= c.recorded_at`;
  return new Set(found.map(({ id }) => id));
}
