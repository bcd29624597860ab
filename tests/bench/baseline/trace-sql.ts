/**
 * The links behind a lot and nothing else: no names, no balance, no other side. Parameter: the lot.
 * LATERAL … OFFSET 0 reads each lot's few rows by their index; left to itself the planner expects many and reads them all.
 */
export const traceSql = `
  WITH RECURSIVE before(lot_id) AS (
    SELECT $1::uuid
    UNION
    SELECT i.source_lot_id FROM before CROSS JOIN LATERAL (
      SELECT i.source_lot_id FROM lot_input i WHERE i.lot_id = before.lot_id AND i.source_lot_id IS NOT NULL
        AND NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id) OFFSET 0) i
  )
  SELECT i.* FROM before CROSS JOIN LATERAL (
    SELECT coalesce(i.source_lot_id, i.receipt_id) AS source, i.lot_id, i.grams FROM lot_input i WHERE i.lot_id = before.lot_id
      AND NOT EXISTS (SELECT FROM lot_input a WHERE a.amends_id = i.id) OFFSET 0) i`;
