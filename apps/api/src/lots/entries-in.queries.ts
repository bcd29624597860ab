import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { femtograms } from '../platform/kept-weight';

/** `mass` of meat and rework is as trimmed. */
export type Entry = {
  id: string;
  lotId: string;
  isWeighed: boolean;
  takenAt: Date;
  /** The item of the delivery, or the item weighed; rework has none. */
  itemId?: string;
  source?: { lotId: string; code: string };
  mass: bigint;
  /** The restricted substance, as it applied at the weighing. */
  percent?: number;
};
type Row = Pick<Entry, 'id' | 'lotId' | 'isWeighed' | 'takenAt'> & {
  itemId: string | null;
  sourceLotId: string | null;
  sourceCode: string | null;
  grams: Prisma.Decimal;
  percent: Prisma.Decimal | null;
};

/** Looked up per entry, because in a join the planner reads all deliveries for each. */
const deliveryOf = (entry: 'i' | 'w') => Prisma.sql`
  SELECT d.item_id, d.amends_id, d.fraction_percent FROM receipt_now d WHERE d.id = ${Prisma.raw(entry)}.receipt_id LIMIT 1`;

/** Oldest first, with every lot reworked into these. A corrected delivery counts as what it is now known to be. */
export async function entriesIn(tx: Tx, lotIds: readonly string[]): Promise<Entry[]> {
  const rows = await tx.$queryRaw<Row[]>`
    WITH RECURSIVE part(id) AS (
      SELECT id FROM lot WHERE id = ANY(${lotIds}::uuid[])
      UNION
      SELECT i.source_lot_id FROM part JOIN lot_input_now i ON i.lot_id = part.id
      WHERE i.source_lot_id IS NOT NULL
    ), entry AS (
      SELECT i.id, i.lot_id, false AS is_weighed, r.item_id, i.source_lot_id, i.trimmed_grams AS grams,
        NULL::numeric AS percent, i.taken_at
      FROM part JOIN lot_input_now i ON i.lot_id = part.id LEFT JOIN LATERAL (${deliveryOf('i')}) r ON true
      UNION ALL
      SELECT w.id, w.lot_id, true, CASE WHEN r.amends_id IS NULL THEN w.item_id ELSE r.item_id END, NULL, w.grams,
        CASE WHEN r.amends_id IS NULL THEN w.fraction_percent ELSE r.fraction_percent END, w.taken_at
      FROM part JOIN weighing_now w ON w.lot_id = part.id LEFT JOIN LATERAL (${deliveryOf('w')}) r ON true
    )
    SELECT e.id, e.lot_id AS "lotId", e.is_weighed AS "isWeighed", e.taken_at AS "takenAt", e.item_id AS "itemId",
      e.source_lot_id AS "sourceLotId", s.code AS "sourceCode", e.grams, e.percent
    FROM entry e LEFT JOIN lot s ON s.id = e.source_lot_id ORDER BY e.taken_at, e.id`;
  return rows.map(({ itemId, sourceLotId, sourceCode, grams, percent, ...row }) => ({
    ...row,
    itemId: itemId ?? undefined,
    source: sourceLotId && sourceCode ? { lotId: sourceLotId, code: sourceCode } : undefined,
    mass: femtograms(grams),
    percent: percent?.toNumber(),
  }));
}
