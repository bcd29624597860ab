import { massFromGrams, setAside, type ProductEvent, type SetAside } from '@larderbook/haccp';
import type { Tx } from '../platform/database';

export const nothingAside: SetAside = { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n };
type Row = { lotId: string; kind: ProductEvent['kind']; grams: string };

/** In the order of the ledger, a correction in the place of what it corrects. Only lots with a decision. */
export async function setAsideIn(tx: Tx, lotIds: readonly string[]): Promise<ReadonlyMap<string, SetAside>> {
  const rows = await tx.$queryRaw<Row[]>`
    WITH RECURSIVE decided AS (
      SELECT DISTINCT lot_id FROM disposition_now WHERE lot_id = ANY(${lotIds}::uuid[]) AND decision IN ('condemn', 'rework')
    ), taken(lot_id, grams, first_id, seq) AS (
      SELECT i.source_lot_id, i.grams, i.id, i.seq FROM decided c JOIN lot_input_now i ON i.source_lot_id = c.lot_id
      UNION ALL
      SELECT t.lot_id, t.grams, b.id, b.seq FROM taken t JOIN lot_input i ON i.id = t.first_id
        JOIN lot_input b ON b.id = i.amends_id
    )
    SELECT h.lot_id AS "lotId", h.kind, h.grams::text AS grams FROM (
      SELECT f.seq, p.lot_id, 'packed' AS kind, p.count * p.net_grams AS grams
        FROM decided c JOIN packing_now p ON p.lot_id = c.lot_id JOIN packing f ON f.id = p.id
      UNION ALL
      SELECT f.seq, p.lot_id, 'shipped', l.count * p.net_grams
        FROM decided c JOIN packing_now p ON p.lot_id = c.lot_id JOIN shipment_line_now l ON l.packing_id = p.id
        JOIN shipment f ON f.id = l.shipment_id
      UNION ALL
      SELECT x.seq, x.lot_id, CASE x.decision WHEN 'condemn' THEN 'condemned' ELSE 'to-rework' END, x.grams
        FROM decided c JOIN disposition_now x ON x.lot_id = c.lot_id AND x.decision IN ('condemn', 'rework')
      UNION ALL
      SELECT t.seq, t.lot_id, 'reworked', t.grams FROM taken t
        WHERE NOT EXISTS (SELECT FROM lot_input i WHERE i.id = t.first_id AND i.amends_id IS NOT NULL)
    ) h ORDER BY h.seq`;

  const events = new Map<string, ProductEvent[]>();
  for (const { lotId, kind, grams } of rows) {
    const happened = events.get(lotId) ?? [];
    happened.push({ kind, mass: massFromGrams(grams) });
    events.set(lotId, happened);
  }
  return new Map([...events].map(([lotId, happened]) => [lotId, setAside(happened)]));
}
