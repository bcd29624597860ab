import type { Trace } from '@larderbook/contracts';
import { customersNow } from '../shipping/customers.queries';
import type { Tx } from '../platform/database';
import { namesEver } from './names-ever';

export type TraceNode = Trace['forward']['nodes'][number];
type Row = Pick<TraceNode, 'kind' | 'id' | 'code' | 'what'> & {
  supplier: string | null;
  supplierLot: string | null;
  isRefused: boolean | null;
  count: number | null;
  at: Date;
};

/** Skips ids of other things. */
export async function describeNodes(tx: Tx, ids: readonly string[]): Promise<ReadonlyMap<string, TraceNode>> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT 'receipt' AS kind, r.id, r.code, item.now AS what, supplier.now AS supplier, r.supplier_lot AS "supplierLot",
      r.decision = 'refused' AS "isRefused", NULL::int AS count, r.taken_at AS at
      FROM receipt_now r JOIN (${namesEver('item')}) item ON item.id = r.item_id
      JOIN (${namesEver('supplier')}) supplier ON supplier.id = r.supplier_id
      WHERE r.id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT 'lot', l.id, l.code, product.now, NULL, NULL, NULL, NULL, l.taken_at
      FROM lot l JOIN (${namesEver('product')}) product ON product.id = l.product_id WHERE l.id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT 'packing', p.id, p.code, product.now, NULL, NULL, NULL, p.count, p.taken_at
      FROM packing_now p JOIN lot l ON l.id = p.lot_id
      JOIN (${namesEver('product')}) product ON product.id = l.product_id WHERE p.id = ANY(${ids}::uuid[])
    UNION ALL
    SELECT 'customer', s.customer_id, '', '', NULL, NULL, NULL, NULL, max(s.taken_at)
      FROM shipment_now s WHERE s.customer_id = ANY(${ids}::uuid[]) GROUP BY s.customer_id`;

  const customers = await customersNow(
    tx,
    rows.filter(({ kind }) => kind === 'customer').map(({ id }) => id),
  );
  return new Map(
    rows.map((row) => {
      const customer = customers.get(row.id);
      return [row.id, { ...told(row), ...(customer && { code: customer.name, what: customer.address }) }];
    }),
  );
}

const told = ({ kind, id, code, what, at, ...row }: Row): TraceNode => ({
  kind,
  id,
  code,
  what,
  at: at.toISOString(),
  ...(row.supplier !== null && { supplier: row.supplier }),
  ...(row.supplierLot !== null && { supplierLot: row.supplierLot }),
  ...(row.isRefused && { isRefused: true }),
  ...(row.count !== null && { count: row.count }),
});
