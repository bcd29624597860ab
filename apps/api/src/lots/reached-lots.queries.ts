import type { Tx } from '../platform/database';

/**
 * Every lot that something of these deliveries or lots went into, through any number of reworked lots; the lots
 * themselves among them. Repeats are removed as they are met (UNION), so a lot that is reached by many ways is walked once, and a circle
 * ends. Entries that a later one corrects do not count.
 */
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

/** Every lot that something in a lot or a packing came from; the lot itself among them. */
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
