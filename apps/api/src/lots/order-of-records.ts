import type { Tx } from '../platform/database';

/** The ledger line of the last judged record: of the whole lot, and at each of its control points. */
export type LastRecords = { ofLot: bigint; atPoint: ReadonlyMap<string, bigint>; weighed: bigint };

const none: LastRecords = { ofLot: 0n, atPoint: new Map(), weighed: 0n };
type Row = { lotId: string; controlPointId: string | null; seq: bigint };

/** The ledger is the order in which things were recorded; a clock may stand still or step back, the ledger cannot. */
export async function lastRecords(tx: Tx, lotIds: readonly string[]): Promise<(lotId: string) => LastRecords> {
  const rows =
    lotIds.length === 0
      ? []
      : await tx.$queryRaw<Row[]>`
    SELECT r.lot_id AS "lotId", r.control_point_id AS "controlPointId", max(a.seq) AS seq
    FROM (
      SELECT id, lot_id, control_point_id FROM reading WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, control_point_id FROM stage_end WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, NULL FROM weighing WHERE lot_id = ANY(${lotIds}::uuid[])
      UNION ALL SELECT id, lot_id, NULL FROM lot_input WHERE lot_id = ANY(${lotIds}::uuid[])
    ) r JOIN acknowledgement a ON a.id = r.id
    GROUP BY 1, 2`;
  return (lotId) => {
    const own = rows.filter((row) => row.lotId === lotId);
    if (own.length === 0) return none;
    return {
      ofLot: latest(own),
      weighed: latest(own.filter(({ controlPointId }) => controlPointId === null)),
      atPoint: new Map(own.flatMap(({ controlPointId, seq }) => (controlPointId ? [[controlPointId, seq]] : []))),
    };
  };
}

const latest = (rows: Row[]): bigint => rows.reduce((last, { seq }) => (seq > last ? seq : last), 0n);
