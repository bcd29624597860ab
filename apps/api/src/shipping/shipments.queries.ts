import type { InputOf, listShipments as contract, ReplyOf } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { correctionsOfThese } from '../lots/goods-corrections.queries';
import { madeBy, personNames } from '../shop/person-names';
import { productsNow } from '../products/products-now';
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
type Row = Prisma.ShipmentGetPayload<{ include: typeof withLines }> & { voided?: boolean | null };

/** A voided shipment stays in the list. */
const lastRows = Prisma.sql`
  SELECT coalesce(x.first_id, x.id) AS id, x.taken_at FROM shipment x
  WHERE NOT EXISTS (SELECT FROM shipment later WHERE later.establishment_id = x.establishment_id AND later.amends_id = x.id)`;

/** Newest first. Shipments of the same moment stay on one page. */
export async function listShipments(tx: Tx, { before }: InputOf<typeof contract>): Promise<Page> {
  const earlier = before ? Prisma.sql`s.taken_at < ${new Date(before)}` : Prisma.sql`true`;
  const chosen = await tx.$queryRaw<{ id: string; more: boolean }[]>`
    WITH shipped AS (${lastRows}), page AS (
      SELECT s.id, s.taken_at FROM shipped s WHERE ${earlier}
      ORDER BY s.taken_at DESC FETCH FIRST ${pageOf} ROWS WITH TIES)
    SELECT id, EXISTS (SELECT FROM shipped s WHERE s.taken_at < (SELECT min(taken_at) FROM page)) AS more FROM page`;
  const ids = chosen.map(({ id }) => id);
  const rows = [...(await tx.shipment.findMany({ where: { id: { in: ids } }, include: withLines })), ...(await voided(tx, ids))];
  return { shipments: await shown(tx, rows.sort(newestFirst)), more: chosen[0]?.more ?? false };
}

const newestFirst = (a: Row, b: Row): number => b.takenAt.getTime() - a.takenAt.getTime() || b.number - a.number;

/** `shipmentId` may also be that of a correcting row. */
export async function showShipment(tx: Tx, shipmentId: string): Promise<Shipment | undefined> {
  const row = await tx.shipmentRow.findFirst({ where: { id: shipmentId }, select: { firstId: true } });
  const id = row?.firstId ?? shipmentId;
  const found = await tx.shipment.findMany({ where: { id }, include: withLines });
  const [shipment] = await shown(tx, found.length > 0 ? found : await voided(tx, [id]));
  return shipment;
}

/** Oldest first. */
export async function shipmentsOfLot(tx: Tx, lotId: string): Promise<Shipment[]> {
  const where = { lines: { some: { packing: { lotId } } } };
  return shown(tx, await tx.shipment.findMany({ where, include: withLines, orderBy: { number: 'asc' } }));
}

/** Nothing of a voided shipment left, so it has no lines. */
async function voided(tx: Tx, ids: readonly string[]): Promise<Row[]> {
  const rows = await tx.shipmentRow.findMany({ where: { voided: true, firstId: { in: [...ids] } } });
  return rows.map((row) => ({ ...row, rowId: row.id, id: row.firstId ?? row.id, lines: [] }));
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
  const corrections = await correctionsOfThese(
    tx,
    rows.map(({ id }) => id),
    names,
  );
  return rows.map((row) => ({
    shipmentId: row.id,
    rowId: row.rowId,
    corrections: corrections.filter(({ id }) => id === row.id),
    voided: row.voided === true,
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
