import type { Tx } from '../platform/database';

/** Includes the lots themselves. UNION walks each lot once and ends circles. */
export async function lotsAfter(tx: Tx, nodeIds: readonly string[]): Promise<string[]> {
  const lots = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE reached(id) AS (
      (SELECT id FROM lot WHERE id = ANY(${nodeIds}::uuid[])
       UNION SELECT i.lot_id FROM lot_input_now i
         WHERE i.receipt_id = ANY(${nodeIds}::uuid[])
       UNION SELECT w.lot_id FROM weighing_now w
         WHERE w.receipt_id = ANY(${nodeIds}::uuid[]))
      UNION
      SELECT i.lot_id FROM reached r JOIN lot_input_now i ON i.source_lot_id = r.id
    ) SELECT id FROM reached`;
  return lots.map(({ id }) => id);
}

/** Includes the lot itself. */
export async function lotsBefore(tx: Tx, nodeId: string): Promise<string[]> {
  const lots = await tx.$queryRaw<{ id: string }[]>`
    WITH RECURSIVE reached(id) AS (
      (SELECT id FROM lot WHERE id = ${nodeId}::uuid UNION SELECT lot_id FROM packing_now WHERE id = ${nodeId}::uuid)
      UNION
      SELECT i.source_lot_id FROM reached r JOIN lot_input_now i ON i.lot_id = r.id
      WHERE i.source_lot_id IS NOT NULL
    ) SELECT id FROM reached`;
  return lots.map(({ id }) => id);
}
