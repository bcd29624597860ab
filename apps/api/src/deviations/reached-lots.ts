import { Prisma } from '../generated/prisma/client';

/** `reached` includes lots that product was reworked into, and every lot made from a delivery. */
export const reachedLots = (deviationIds: readonly string[]): Prisma.Sql => Prisma.sql`
  WITH RECURSIVE chosen AS (
    SELECT id, lot_id, receipt_id, seq FROM deviation WHERE id = ANY(${deviationIds}::uuid[])
  ), reached(deviation_id, lot_id) AS (
    SELECT id, lot_id FROM chosen WHERE lot_id IS NOT NULL
    UNION
    SELECT c.id, i.lot_id FROM chosen c JOIN lot_input_now i ON i.receipt_id = c.receipt_id
    UNION
    SELECT c.id, w.lot_id FROM chosen c JOIN weighing_now w ON w.receipt_id = c.receipt_id
    UNION
    SELECT r.deviation_id, i.lot_id FROM reached r JOIN lot_input_now i ON i.source_lot_id = r.lot_id
  )`;
