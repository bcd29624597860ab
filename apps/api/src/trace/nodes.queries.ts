import type { Trace } from '@larderbook/contracts';
import { customersNow } from '../shipping/customers.queries';
import type { Tx } from '../platform/database';
import { namesEver } from './names-ever';

export type TraceNode = Trace['forward']['nodes'][number];
type Row = Omit<TraceNode, 'at'> & { at: Date };

/** What deliveries, lots, packages and customers are called in a trace, by id. Ids of other things are passed over. */
export async function describeNodes(tx: Tx, ids: readonly string[]): Promise<ReadonlyMap<string, TraceNode>> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT 'receipt' AS kind, r.id, r.code, item.now || ' from ' || supplier.now || ', lot ' || r.supplier_lot
      || CASE r.decision WHEN 'refused' THEN ', refused' ELSE '' END AS what,
      r.taken_at AS at
      FROM receipt_now r JOIN (${namesEver('item')}) item ON item.id = r.item_id
      JOIN (${namesEver('supplier')}) supplier ON supplier.id = r.supplier_id
      WHERE r.id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT 'lot', l.id, l.code, product.now, l.taken_at
      FROM lot l JOIN (${namesEver('product')}) product ON product.id = l.product_id WHERE l.id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT 'packing', p.id, p.code, p.count || ' packages of ' || product.now, p.taken_at
      FROM packing_now p JOIN lot l ON l.id = p.lot_id
      JOIN (${namesEver('product')}) product ON product.id = l.product_id WHERE p.id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT 'customer', s.customer_id, '', '', max(s.taken_at)
      FROM shipment_now s WHERE s.customer_id = ANY(${ids}::uuid[]) GROUP BY s.customer_id`;

  const customers = await customersNow(
    tx,
    rows.filter(({ kind }) => kind === 'customer').map(({ id }) => id),
  );
  return new Map(
    rows.map(({ at, ...row }) => {
      const customer = customers.get(row.id);
      return [row.id, { ...row, at: at.toISOString(), ...(customer && { code: customer.name, what: customer.address }) }];
    }),
  );
}
