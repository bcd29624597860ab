import type { Tx } from '../platform/database';

/**
 * Ledger lines: last at each control point, last that changed what went in, first and last meat put in. Corrections are
 * no other meat.
 */
export type LastRecords = { atPoint: ReadonlyMap<string, bigint>; weighed: bigint; putIn: { first: bigint; last: bigint } };

type Row = { lotId: string; controlPointId: string | null; isPutIn: boolean; first: bigint; seq: bigint };

/** The ledger gives the order, because a clock may stand still or step back. */
export async function lastRecords(tx: Tx, lotIds: readonly string[]): Promise<(lotId: string) => LastRecords> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT r.lot_id AS "lotId", r.control_point_id AS "controlPointId", r.is_put_in AS "isPutIn", min(r.seq) AS first, max(r.seq) AS seq
    FROM (
      SELECT seq, lot_id, control_point_id, false AS is_put_in FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT seq, lot_id, control_point_id, false FROM stage_end WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT seq, lot_id, control_point_id, false FROM clarification WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT seq, lot_id, NULL, false FROM weighing WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT seq, lot_id, NULL, amends_id IS NULL FROM lot_input WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT r.seq, i.lot_id, NULL, false FROM lot_input_now i JOIN receipt r ON r.first_id = i.receipt_id
        WHERE i.lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT r.seq, w.lot_id, NULL, false FROM weighing_now w JOIN receipt r ON r.first_id = w.receipt_id
        WHERE w.lot_id = ANY(${lotIds}::uuid[])
    ) r
    GROUP BY 1, 2, 3`;
  return (lotId) => {
    const own = rows.filter((row) => row.lotId === lotId);
    return {
      weighed: latest(own.filter(({ controlPointId }) => controlPointId === null)),
      putIn: putIn(own.find(({ isPutIn }) => isPutIn)),
      atPoint: new Map(own.flatMap(({ controlPointId, seq }) => (controlPointId ? [[controlPointId, seq]] : []))),
    };
  };
}

const putIn = (row?: Row) => ({ first: row?.first ?? 0n, last: row?.seq ?? 0n });

const latest = (rows: Row[]): bigint => rows.reduce((last, { seq }) => (seq > last ? seq : last), 0n);

/** Keyed by record id: everything that curves of these lots are judged from. */
export async function orderOf(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, bigint>> {
  if (lotIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<{ id: string; seq: bigint }[]>`
    SELECT r.id, r.seq FROM (
      SELECT id, seq FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq FROM stage_end WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, seq FROM clarification WHERE lot_id = ANY(${lotIds}::uuid[])
    ) r`;
  return new Map(rows.map(({ id, seq }) => [id, seq]));
}
