import type { Tx } from '../platform/database';

/** This may take back the clearance of a lot. */
export type RecordSince = {
  lotId: string;
  /** The row, or the review itself. */
  id: string;
  kind:
    | 'review'
    | 'reading'
    | 'stage end'
    | 'clarification'
    | 'weighing'
    | 'input'
    | 'packing'
    | 'removal'
    | 'delivery'
    | 'calibration'
    | 'taking back';
  amendsId: string | null;
  controlPointId: string | null;
  /** What the record is of; the reason when a person took the review back. */
  code: string | null;
  seq: bigint;
  at: Date;
  personId: string;
};

/**
 * In the order of the ledger. New removals change nothing reviewed, but corrections do: of removals, of a delivery that
 * went in, of a relied-on check now no longer good. A first later check that failed counts too. New packings are listed
 * because no review has seen them.
 */
export async function recordsSinceReview(tx: Tx, lotIds: readonly string[]): Promise<RecordSince[]> {
  if (lotIds.length === 0) return [];
  return tx.$queryRaw<RecordSince[]>`
    WITH used AS (
      SELECT lot_id, instrument_id, taken_at FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT lot_id, instrument_id, taken_at FROM weighing WHERE lot_id = ANY(${lotIds}::uuid[])
    ), first AS (
      SELECT v.lot_id, min(v.seq) AS seq FROM review v
      WHERE v.lot_id = ANY(${lotIds}::uuid[]) GROUP BY v.lot_id
    ), since AS (
      SELECT id, seq, lot_id, 'review' AS kind, NULL::uuid AS amends_id, NULL::uuid AS control_point_id, NULL AS code
        FROM review WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT t.id, t.seq, v.lot_id, 'taking back', NULL, NULL, t.reason
        FROM review_taken_back t JOIN review v ON v.id = t.review_id WHERE v.lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'reading', amends_id, control_point_id, NULL
        FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'stage end', amends_id, control_point_id, NULL
        FROM stage_end WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'clarification', NULL, control_point_id, NULL
        FROM clarification WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'weighing', amends_id, NULL, NULL FROM weighing WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'input', amends_id, NULL, NULL FROM lot_input WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'packing', amends_id, NULL, code
        FROM packing WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq, lot_id, 'removal', amends_id, NULL, kind
        FROM removal WHERE lot_id = ANY(${lotIds}::uuid[]) AND amends_id IS NOT NULL
      UNION ALL SELECT DISTINCT r.id, r.seq, used.lot_id, 'delivery', r.amends_id, NULL::uuid, r.code
        FROM (SELECT lot_id, receipt_id FROM lot_input_now WHERE lot_id = ANY(${lotIds}::uuid[])
          UNION SELECT lot_id, receipt_id FROM weighing_now WHERE lot_id = ANY(${lotIds}::uuid[])) used
        JOIN receipt r ON r.first_id = used.receipt_id
      UNION ALL SELECT DISTINCT c.id, c.seq, used.lot_id, 'calibration', c.amends_id, NULL::uuid, i.name
        FROM calibration c JOIN calibration before ON before.id = c.amends_id
        JOIN used ON used.instrument_id = c.instrument_id AND used.taken_at >= before.taken_at
        JOIN instrument i ON i.id = c.instrument_id
        WHERE (c.voided OR c.verdict ->> 'kind' <> 'met') AND NOT EXISTS (SELECT FROM calibration_now n
          WHERE n.instrument_id = c.instrument_id AND n.id <> c.first_id
            AND n.taken_at > before.taken_at AND n.taken_at <= used.taken_at)
      UNION ALL SELECT DISTINCT c.id, c.seq, used.lot_id, 'calibration', NULL::uuid, NULL::uuid, i.name
        FROM calibration_now c JOIN used ON used.instrument_id = c.instrument_id AND used.taken_at < c.taken_at
        JOIN instrument i ON i.id = c.instrument_id
        WHERE c.verdict ->> 'kind' <> 'met' AND NOT EXISTS (SELECT FROM calibration_now n
          WHERE n.instrument_id = c.instrument_id AND n.taken_at > used.taken_at AND n.taken_at < c.taken_at)
    )
    SELECT s.lot_id AS "lotId", s.id, s.kind, s.amends_id AS "amendsId", s.control_point_id AS "controlPointId", s.code,
      s.seq, e.at, e.person AS "personId"
    FROM since s JOIN first f ON f.lot_id = s.lot_id AND s.seq >= f.seq
    JOIN ledger_entry e ON e.establishment_id = current_establishment() AND e.seq = s.seq
    ORDER BY s.seq`;
}
