import type { Tx } from '../platform/database';

/** Ledger lines: of the last judged record of the whole lot, at each of its control points, and of the last review. */
export type LastRecords = { ofLot: bigint; atPoint: ReadonlyMap<string, bigint>; weighed: bigint; review?: bigint };

type Row = { lotId: string; controlPointId: string | null; isReview: boolean; seq: bigint };

/** The ledger is the order in which things were recorded; a clock may stand still or step back, the ledger cannot. */
export async function lastRecords(tx: Tx, lotIds: readonly string[]): Promise<(lotId: string) => LastRecords> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT r.lot_id AS "lotId", r.control_point_id AS "controlPointId", r.is_review AS "isReview", max(a.seq) AS seq
    FROM (
      SELECT id, lot_id, control_point_id, false AS is_review FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, control_point_id, false FROM stage_end WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, control_point_id, false FROM clarification WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, NULL, false FROM weighing WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, NULL, false FROM lot_input WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, NULL, true FROM review WHERE lot_id = ANY(${lotIds}::uuid[])
    ) r JOIN acknowledgement a ON a.id = r.id
    GROUP BY 1, 2, 3`;
  return (lotId) => {
    const own = rows.filter((row) => row.lotId === lotId);
    const judged = own.filter(({ isReview }) => !isReview);
    return {
      ofLot: latest(judged),
      weighed: latest(judged.filter(({ controlPointId }) => controlPointId === null)),
      atPoint: new Map(judged.flatMap(({ controlPointId, seq }) => (controlPointId ? [[controlPointId, seq]] : []))),
      review: own.find(({ isReview }) => isReview)?.seq,
    };
  };
}

const latest = (rows: Row[]): bigint => rows.reduce((last, { seq }) => (seq > last ? seq : last), 0n);

/** The ledger line of everything that curves of these lots are judged from, by its id. */
export async function orderOf(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, bigint>> {
  if (lotIds.length === 0) return new Map();
  const rows = await tx.$queryRaw<{ id: string; seq: bigint }[]>`
    SELECT r.id, a.seq FROM (
      SELECT id FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id FROM stage_end WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id FROM clarification WHERE lot_id = ANY(${lotIds}::uuid[])
    ) r JOIN acknowledgement a ON a.id = r.id`;
  return new Map(rows.map(({ id, seq }) => [id, seq]));
}
