import type { Tx } from '../platform/database';
import { namesEver } from './names-ever';

/** Names are those that count now. */
export type DeliveryOfLot = {
  receiptId: string;
  code: string;
  supplierId: string;
  supplier: string;
  item: string;
  supplierLot: string;
  decision: 'accepted' | 'refused';
  reason: string;
  grams: number;
  receivedAt: Date;
};

/** Includes every supplier; the earliest comes first. Case and blanks do not count. */
export const deliveriesUnder = (tx: Tx, supplierLot: string): Promise<DeliveryOfLot[]> =>
  tx.$queryRaw<DeliveryOfLot[]>`
    SELECT r.id AS "receiptId", r.code, r.supplier_id AS "supplierId", supplier.now AS supplier, item.now AS item,
      r.supplier_lot AS "supplierLot", r.decision, r.reason, r.grams::float8 AS grams, r.taken_at AS "receivedAt"
    FROM receipt_now r
    JOIN (${namesEver('item')}) item ON item.id = r.item_id
    JOIN (${namesEver('supplier')}) supplier ON supplier.id = r.supplier_id
    WHERE upper(regexp_replace(r.supplier_lot, '[[:space:]]', '', 'g'))
        = upper(regexp_replace(${supplierLot}::text, '[[:space:]]', '', 'g'))
    ORDER BY r.taken_at, r.code`;
