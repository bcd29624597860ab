import type { InputOf, listShipments as contract, ReplyOf } from '@larderbook/contracts';
import type { Prisma } from '../generated/prisma/client';
import { madeBy, personNames } from '../people/person-names';
import { productsNow } from '../plan/products-now';
import type { Tx } from '../platform/database';
import { customersNow } from './customers.queries';

type Page = ReplyOf<typeof contract>;
export type Shipment = Page['shipments'][number];

const pageOf = 50;
const withLines = {
  lines: {
    include: { packing: { select: { code: true, lotId: true, netGrams: true, lot: { select: { code: true, productId: true } } } } },
    orderBy: { id: 'asc' },
  },
} satisfies Prisma.ShipmentInclude;
type Row = Prisma.ShipmentGetPayload<{ include: typeof withLines }>;

/** Shipments, newest first, a page at a time: those that left before an instant. */
export async function listShipments(tx: Tx, { before }: InputOf<typeof contract>): Promise<Page> {
  const rows = await tx.shipment.findMany({
    where: before ? { takenAt: { lt: new Date(before) } } : {},
    include: withLines,
    orderBy: [{ takenAt: 'desc' }, { number: 'desc' }],
    take: pageOf + 1,
  });
  return { shipments: await shown(tx, rows.slice(0, pageOf)), more: rows.length > pageOf };
}

export async function showShipment(tx: Tx, shipmentId: string): Promise<Shipment | undefined> {
  const [shipment] = await shown(tx, await tx.shipment.findMany({ where: { id: shipmentId }, include: withLines }));
  return shipment;
}

/** Every shipment with packages of a lot, oldest first. */
export async function shipmentsOfLot(tx: Tx, lotId: string): Promise<Shipment[]> {
  const where = { lines: { some: { packing: { lotId } } } };
  return shown(tx, await tx.shipment.findMany({ where, include: withLines, orderBy: { number: 'asc' } }));
}

async function shown(tx: Tx, rows: Row[]): Promise<Shipment[]> {
  const customers = await customersNow(tx, rows.map(({ customerId }) => customerId));
  const products = await productsNow(tx, rows.flatMap(({ lines }) => lines.map(({ packing }) => packing.lot.productId)));
  const names = await personNames(tx);
  return rows.map((row) => ({
    shipmentId: row.id,
    number: row.number,
    customer: customers.get(row.customerId) ?? { customerId: row.customerId, name: '', address: '', contact: '' },
    document: row.document,
    made: madeBy(row, names),
    lines: row.lines.map(({ packingId, count, packing }) => ({
      packingId, packingCode: packing.code, lotId: packing.lotId, lotCode: packing.lot.code, productName: products.get(packing.lot.productId)?.name ?? '',
      count, netGrams: packing.netGrams.times(count).toNumber(),
    })),
  }));
}
