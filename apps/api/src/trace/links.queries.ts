import type { Tx } from '../platform/database';

/** Something went from one node into another. Grams are rounded for showing; what decides who is reached is the link itself. */
export type TraceLink = { from: string; to: string; fromKind: NodeKind; toKind: NodeKind; grams: number; count?: number };
export type NodeKind = 'receipt' | 'lot' | 'packing' | 'customer';
type Row = Omit<TraceLink, 'count'> & { count: number | null };

/**
 * Every link after a delivery, a lot or a packing, through any number of reworked lots, to the customers. Repeats are
 * removed as they are met (UNION), so a lot that is reached by many ways is walked once. Corrected entries do not count.
 */
export async function linksAfter(tx: Tx, nodeId: string): Promise<TraceLink[]> {
  const rows = await tx.$queryRaw<Row[]>`
    WITH RECURSIVE taken AS (
      SELECT i.receipt_id, i.lot_id, i.grams FROM lot_input i WHERE i.receipt_id = ${nodeId}::uuid
        AND NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
      UNION ALL
      SELECT w.receipt_id, w.lot_id, w.grams FROM weighing w WHERE w.receipt_id = ${nodeId}::uuid
        AND NOT EXISTS (SELECT FROM weighing a WHERE a.amends_id = w.id)
    ), reached(id) AS (
      (SELECT id FROM lot WHERE id = ${nodeId}::uuid UNION SELECT lot_id FROM taken)
      UNION
      SELECT i.lot_id FROM reached r JOIN lot_input i ON i.source_lot_id = r.id
      WHERE NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
    ), packages AS (
      SELECT p.id, p.lot_id, p.count, p.net_grams FROM reached r JOIN packing p ON p.lot_id = r.id
      UNION ALL
      SELECT p.id, NULL, p.count, p.net_grams FROM packing p WHERE p.id = ${nodeId}::uuid
    )
    SELECT receipt_id AS "from", lot_id AS "to", 'receipt' AS "fromKind", 'lot' AS "toKind", sum(grams)::float8 AS grams, NULL::int AS count
      FROM taken GROUP BY receipt_id, lot_id
    UNION ALL
    SELECT i.source_lot_id, i.lot_id, 'lot', 'lot', sum(i.grams)::float8, NULL
      FROM reached r JOIN lot_input i ON i.source_lot_id = r.id
      WHERE NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id) GROUP BY i.source_lot_id, i.lot_id
    UNION ALL
    SELECT lot_id, id, 'lot', 'packing', (count * net_grams)::float8, count FROM packages WHERE lot_id IS NOT NULL
    UNION ALL
    SELECT p.id, s.customer_id, 'packing', 'customer', sum(l.count * p.net_grams)::float8, sum(l.count)::int
      FROM packages p JOIN shipment_line l ON l.packing_id = p.id JOIN shipment s ON s.id = l.shipment_id GROUP BY p.id, s.customer_id`;
  return rows.map(told);
}

/** Every link before a lot or a packing: the lots it was made of, through any number of reworked ones, to the deliveries. */
export async function linksBefore(tx: Tx, nodeId: string): Promise<TraceLink[]> {
  const rows = await tx.$queryRaw<Row[]>`
    WITH RECURSIVE reached(id) AS (
      (SELECT id FROM lot WHERE id = ${nodeId}::uuid UNION SELECT lot_id FROM packing WHERE id = ${nodeId}::uuid)
      UNION
      SELECT i.source_lot_id FROM reached r JOIN lot_input i ON i.lot_id = r.id
      WHERE i.source_lot_id IS NOT NULL AND NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
    ), inputs AS (
      SELECT i.source_lot_id, i.receipt_id, i.lot_id, i.grams FROM reached r JOIN lot_input i ON i.lot_id = r.id
        WHERE NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id)
      UNION ALL
      SELECT NULL, w.receipt_id, w.lot_id, w.grams FROM reached r JOIN weighing w ON w.lot_id = r.id
        WHERE w.receipt_id IS NOT NULL AND NOT EXISTS (SELECT FROM weighing a WHERE a.amends_id = w.id)
    )
    SELECT coalesce(source_lot_id, receipt_id) AS "from", lot_id AS "to", CASE WHEN receipt_id IS NULL THEN 'lot' ELSE 'receipt' END AS "fromKind",
      'lot' AS "toKind", sum(grams)::float8 AS grams, NULL::int AS count
      FROM inputs GROUP BY source_lot_id, receipt_id, lot_id
    UNION ALL
    SELECT lot_id, id, 'lot', 'packing', (count * net_grams)::float8, count FROM packing WHERE id = ${nodeId}::uuid`;
  return rows.map(told);
}

const told = ({ count, ...link }: Row): TraceLink => ({ ...link, ...(count !== null && { count }) });
