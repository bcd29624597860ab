import type { CriticalLimit, Verdict } from '@larderbook/haccp';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { productsHeld } from './held-products.queries';
import { toDecideOf, type ToDecide } from './to-decide';
import { openedWithOf, type OpenedWith } from './what-it-is-about';

/** Each changes what a review saw of a deviation. */
export type DealtWith = `decision ${'recorded' | 'corrected' | 'voided'}` | `action ${'corrected' | 'voided'}` | 'closing taken back';

/** The lot's own, or one of a delivery or reworked lot in it. */
export type DeviationBehind = {
  lotId: string;
  deviationId: string;
  number: number;
  dedupeKey: string;
  controlPointId: string | null;
  limitId: string | null;
  openedWith: OpenedWith;
  substance: string | null;
  limit: CriticalLimit | null;
  verdict: Verdict | null;
  openedAt: Date;
  openedBy: string;
  /** Ledger lines of opening and closing tell what came before and after. */
  openedSeq: bigint | null;
  closedSeq: bigint | null;
  /** In the order of the ledger. */
  dealtWith: { seq: string; at: string; personId: string; what: DealtWith }[];
  subjectId: string | null;
  /** Opened on this lot, not inherited with what went into it. */
  isOwn: boolean;
  hasAction: boolean;
  /** Undefined when decisions cover all. */
  toDecide: ToDecide | undefined;
  /** True again when decisions no longer cover what it concerns. */
  isOpen: boolean;
};
type Row = Omit<DeviationBehind, 'verdict' | 'toDecide' | 'isOpen'> & { isClosed: boolean };

/**
 * Oldest first. A hold travels with the meat through deliveries and reworked lots, but not through corrected entries.
 */
export async function deviationsBehind(tx: Tx, lotIds: readonly string[]): Promise<DeviationBehind[]> {
  const rows = await behind(tx, lotIds);
  const held = await productsHeld(tx, [...new Set(rows.map(({ deviationId }) => deviationId))]);
  return rows.map(({ isClosed, ...row }) => {
    const toDecide = toDecideOf(held.get(row.deviationId));
    return { ...row, verdict: row.openedWith.verdict, toDecide, isOpen: !isClosed || toDecide !== undefined };
  });
}

/** A corrected decision counts for the deviations it named before and names now. */
const dealtWith = Prisma.sql`
  SELECT p.id, p.seq, p.recorded_at AS at, p.recorded_by AS person_id, 'decision ' || CASE WHEN p.voided THEN 'voided'
      WHEN p.amends_id IS NOT NULL THEN 'corrected' ELSE 'recorded' END AS what
    FROM decided_deviation s JOIN disposition p ON p.id = s.disposition_id OR p.amends_id = s.disposition_id
    WHERE s.deviation_id = d.id
  UNION
  SELECT c.id, c.seq, c.recorded_at, c.recorded_by, 'action ' || CASE WHEN c.voided THEN 'voided' ELSE 'corrected' END
    FROM corrective_action c WHERE c.deviation_id = d.id AND c.amends_id IS NOT NULL
  UNION
  SELECT t.id, t.seq, t.recorded_at, t.recorded_by, 'closing taken back'
    FROM closing_taken_back t JOIN deviation_closing k ON k.id = t.closing_id WHERE k.deviation_id = d.id`;

function behind(tx: Tx, lotIds: readonly string[]): Promise<Row[]> {
  return tx.$queryRaw<Row[]>`
    WITH RECURSIVE behind(lot_id, part_id) AS (
      SELECT id, id FROM lot WHERE id = ANY(${lotIds}::uuid[])
      UNION
      SELECT b.lot_id, i.source_lot_id FROM behind b JOIN lot_input_now i ON i.lot_id = b.part_id
      WHERE i.source_lot_id IS NOT NULL
    ), used(lot_id, receipt_id) AS (
      SELECT b.lot_id, i.receipt_id FROM behind b JOIN lot_input_now i ON i.lot_id = b.part_id
      WHERE i.receipt_id IS NOT NULL
      UNION
      SELECT b.lot_id, w.receipt_id FROM behind b JOIN weighing_now w ON w.lot_id = b.part_id
      WHERE w.receipt_id IS NOT NULL
    ), standing(lot_id, deviation_id) AS (
      SELECT b.lot_id, d.id FROM behind b JOIN deviation d ON d.lot_id = b.part_id
      UNION
      SELECT u.lot_id, d.id FROM used u JOIN deviation d ON d.receipt_id = u.receipt_id
    )
    SELECT s.lot_id AS "lotId", d.id AS "deviationId", d.number, d.dedupe_key AS "dedupeKey", d.control_point_id AS "controlPointId",
      d.limit_id AS "limitId", ${openedWithOf('d')} AS "openedWith", d.substance, d.limit,
      d.recorded_at AS "openedAt", d.recorded_by AS "openedBy",
      d.lot_id IS NOT DISTINCT FROM s.lot_id AS "isOwn",
      EXISTS (SELECT FROM corrective_action_now c WHERE c.deviation_id = d.id) AS "hasAction",
      c.id IS NOT NULL AS "isClosed", d.subject_id AS "subjectId",
      d.seq AS "openedSeq",
      c.seq AS "closedSeq",
      (SELECT coalesce(json_agg(json_build_object('seq', x.seq::text, 'at', x.at, 'personId', x.person_id, 'what', x.what)
          ORDER BY x.seq), '[]') FROM (${dealtWith}) x) AS "dealtWith"
    FROM standing s JOIN deviation d ON d.id = s.deviation_id LEFT JOIN deviation_closing_now c ON c.deviation_id = d.id
    ORDER BY d.number`;
}
