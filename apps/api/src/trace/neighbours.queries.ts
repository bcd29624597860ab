import type { Trace } from '@larderbook/contracts';
import { customersNow } from '../shipping/customers.queries';
import type { Tx } from '../platform/database';
import { itemsNow } from '../products/items-now';
import { suppliersNow } from '../receiving/suppliers-now';

/** One step back: whom to call about these deliveries. */
export async function suppliersOf(tx: Tx, receiptIds: readonly string[]): Promise<Trace['suppliers']> {
  const receipts = await tx.receipt.findMany({
    where: { id: { in: [...receiptIds] } },
    select: { code: true, itemId: true, supplierId: true, supplierLot: true, grams: true, takenAt: true },
    orderBy: { takenAt: 'asc' },
  });
  const [suppliers, items] = await Promise.all([
    suppliersNow(tx, unique(receipts.map(({ supplierId }) => supplierId))),
    itemsNow(tx, unique(receipts.map(({ itemId }) => itemId))),
  ]);
  return [...suppliers].map(([supplierId, { name, establishmentNumber, address, contact }]) => ({
    name,
    establishmentNumber,
    address,
    contact,
    receipts: receipts
      .filter((receipt) => receipt.supplierId === supplierId)
      .map(({ code, itemId, supplierLot, grams, takenAt }) => ({
        code,
        item: items.get(itemId)?.name ?? '',
        supplierLot,
        grams: grams.toNumber(),
        receivedAt: takenAt.toISOString(),
      })),
  }));
}

const unique = (ids: string[]): string[] => [...new Set(ids)];

type Row = Trace['customers'][number]['shipments'][number] & { customerId: string; at: Date };

/** One step forward: whom to call about these packages. */
export async function customersOf(tx: Tx, packingIds: readonly string[]): Promise<Trace['customers']> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT s.customer_id AS "customerId", s.number, p.code AS "packingCode", l.code AS "lotCode", line.count,
      (line.count * p.net_grams)::float8 AS grams, s.taken_at AS at
    FROM packing_now p JOIN lot l ON l.id = p.lot_id
    JOIN shipment_line_now line ON line.packing_id = p.id JOIN shipment_now s ON s.id = line.shipment_id
    WHERE p.id = ANY(${packingIds}::uuid[]) ORDER BY s.number, p.code`;
  const customers = await customersNow(tx, unique(rows.map(({ customerId }) => customerId)));
  return [...customers].map(([id, { name, address, contact }]) => ({
    name,
    address,
    contact,
    shipments: rows
      .filter(({ customerId }) => customerId === id)
      .map(({ customerId: _, at, ...shipment }) => ({ ...shipment, at: at.toISOString() })),
  }));
}
