import type { InputOf, listShipments as contract, ReplyOf } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { madeBy, personNames } from '../people/person-names';
import { productsNow } from '../plan/products-now';
import type { Tx } from '../platform/database';
import { customersNow } from './customers.queries';

type Page = ReplyOf<typeof contract>;
export type Shipment = Page['shipments'][number];

const pageOf = 50;
const withLines = {
  lines: {
    include: {
      packing: {
        select: { code: true, lotId: true, netGrams: true, lot: { select: { code: true, productId: true } } },
      },
    },
    orderBy: { id: 'asc' },
  },
} satisfies Prisma.ShipmentInclude;
type Row = Prisma.ShipmentGetPayload<{ include: typeof withLines }>;

/** Shipments, the newest first: a page of those that left before an instant. Those of one moment stay on one page. */
export async function listShipments(tx: Tx, { before }: InputOf<typeof contract>): Promise<Page> {
  const earlier = before ? Prisma.sql`s.taken_at < ${new Date(before)}` : Prisma.sql`true`;
  const chosen = await tx.$queryRaw<{ id: string; more: boolean }[]>`
    WITH page AS (
      SELECT s.id, s.taken_at FROM shipment_now s WHERE ${earlier}
      ORDER BY s.taken_at DESC FETCH FIRST ${pageOf} ROWS WITH TIES)
    SELECT id, EXISTS (SELECT FROM shipment_now s WHERE s.taken_at < (SELECT min(taken_at) FROM page)) AS more FROM page`;
  const rows = await tx.shipment.findMany({
    where: { id: { in: chosen.map(({ id }) => id) } },
    include: withLines,
    orderBy: [{ takenAt: 'desc' }, { number: 'desc' }],
  });
  return { shipments: await shown(tx, rows), more: chosen[0]?.more ?? false };
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
  const customers = await customersNow(
    tx,
    rows.map(({ customerId }) => customerId),
  );
  const products = await productsNow(
    tx,
    rows.flatMap(({ lines }) => lines.map(({ packing }) => packing.lot.productId)),
  );
  const names = await personNames(tx);
  return rows.map((row) => ({
    shipmentId: row.id,
    number: row.number,
    customer: customers.get(row.customerId) ?? { customerId: row.customerId, name: '', address: '', contact: '' },
    document: row.document,
    made: madeBy(row, names),
    lines: row.lines.map(({ packingId, count, packing }) => ({
      packingId,
      packingCode: packing.code,
      lotId: packing.lotId,
      lotCode: packing.lot.code,
      productName: products.get(packing.lot.productId)?.name ?? '',
      count,
      netGrams: packing.netGrams.times(count).toNumber(),
    })),
  }));
}
