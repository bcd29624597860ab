import type { Tx } from '../platform/database';
import { lotsAfter, lotsBefore } from '../lots/reached-lots.queries';

/** Grams are only shown; the link itself decides who is reached. */
export type TraceLink = { from: string; to: string; grams: number; count?: number };
type Row = Omit<TraceLink, 'count'> & { count: number | null };

/* Lots are found first, so that the planner knows how many there are and uses the indexes. */

/** Reaches to the customers. */
export async function linksAfter(tx: Tx, nodeIds: readonly string[]): Promise<TraceLink[]> {
  const lots = await lotsAfter(tx, nodeIds);
  const rows = await tx.$queryRaw<Row[]>`
    SELECT receipt_id AS "from", lot_id AS "to", sum(grams)::float8 AS grams, NULL::int AS count FROM (
      SELECT i.receipt_id, i.lot_id, i.grams FROM lot_input_now i WHERE i.receipt_id = ANY(${nodeIds}::uuid[])
      UNION ALL
      SELECT w.receipt_id, w.lot_id, w.grams FROM weighing_now w WHERE w.receipt_id = ANY(${nodeIds}::uuid[])
    ) taken GROUP BY receipt_id, lot_id
    UNION ALL
    SELECT i.source_lot_id, i.lot_id, sum(i.grams)::float8, NULL FROM lot_input_now i
      WHERE i.source_lot_id = ANY(${lots}::uuid[])
      GROUP BY i.source_lot_id, i.lot_id
    UNION ALL
    SELECT p.lot_id, p.id, (p.count * p.net_grams)::float8, p.count FROM packing_now p
      WHERE p.lot_id = ANY(${lots}::uuid[])`;
  const packings = rows.flatMap(({ to, count }) => (count === null ? [] : to));
  return [...rows.map(told), ...(await linksToCustomers(tx, [...nodeIds, ...packings]))];
}

/** Skips ids that are no packing's. */
async function linksToCustomers(tx: Tx, packingIds: string[]): Promise<TraceLink[]> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT p.id AS "from", s.customer_id AS "to",
      sum(l.count * p.net_grams)::float8 AS grams, sum(l.count)::int AS count
    FROM packing_now p JOIN shipment_line_now l ON l.packing_id = p.id JOIN shipment_now s ON s.id = l.shipment_id
    WHERE p.id = ANY(${packingIds}::uuid[]) GROUP BY p.id, s.customer_id`;
  return rows.map(told);
}

/** Begins with the deliveries. */
export async function linksBefore(tx: Tx, nodeId: string): Promise<TraceLink[]> {
  const lots = await lotsBefore(tx, nodeId);
  const rows = await tx.$queryRaw<Row[]>`
    SELECT "from", lot_id AS "to", sum(grams)::float8 AS grams, NULL::int AS count FROM (
      SELECT coalesce(i.source_lot_id, i.receipt_id) AS "from", i.lot_id, i.grams FROM lot_input_now i
        WHERE i.lot_id = ANY(${lots}::uuid[])
      UNION ALL
      SELECT w.receipt_id, w.lot_id, w.grams FROM weighing_now w
        WHERE w.lot_id = ANY(${lots}::uuid[]) AND w.receipt_id IS NOT NULL
    ) taken GROUP BY "from", lot_id
    UNION ALL
    SELECT p.lot_id, p.id, (p.count * p.net_grams)::float8, p.count FROM packing_now p WHERE p.id = ${nodeId}::uuid`;
  return rows.map(told);
}

const told = ({ count, ...link }: Row): TraceLink => ({ ...link, ...(count !== null && { count }) });
