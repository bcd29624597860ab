import { knownFlags, type InputOf, type listPackings as contract, type ReplyOf } from '@larderbook/contracts';
import { weightsOfLots } from '../lots/lot-weights.queries';
import { whereLotsStand } from '../lots/where-a-lot-stands';
import { madeBy, personNames } from '../shop/person-names';
import { productsNow } from '../products/products-now';
import type { Tx } from '../platform/database';
import { keptWeightOf } from '../platform/kept-weight';
import { mayShip } from './may-ship';

type Listed = ReplyOf<typeof contract>['packings'][number];

/** Oldest use-by first; `left: 'some'` leaves out packings that have left. */
export async function listPackings(tx: Tx, { left }: InputOf<typeof contract>): Promise<Listed[]> {
  const counted = new Map([...(await leftOf(tx))].filter(([, count]) => left === 'any' || count > 0));
  const rows = await tx.packing.findMany({
    where: { id: { in: [...counted.keys()] } },
    include: { lot: { select: { code: true, productId: true } } },
    orderBy: [{ useBy: 'asc' }, { code: 'asc' }],
  });
  const lotIds = [...new Set(rows.map(({ lotId }) => lotId))];
  const stands = await whereLotsStand(tx, lotIds);
  const stock = await weightsOfLots(tx, lotIds);
  const products = await productsNow(
    tx,
    rows.map(({ lot }) => lot.productId),
  );
  const names = await personNames(tx);

  return rows.flatMap((row) => {
    const [stand, inPackages] = [stands.get(row.lotId), stock.get(row.lotId)];
    if (!stand || !inPackages) return [];
    return [
      {
        packingId: row.id,
        rowId: row.rowId,
        code: row.code,
        lotId: row.lotId,
        lotCode: row.lot.code,
        productName: products.get(row.lot.productId)?.name ?? '',
        count: row.count,
        left: counted.get(row.id) ?? 0,
        net: keptWeightOf({ weightValue: row.netValue, weightUnit: row.netUnit, grams: row.netGrams }),
        useBy: row.useBy.toISOString().slice(0, 10),
        flags: knownFlags(row.flags),
        made: madeBy(row, names),
        standing: stand.standing,
        ...mayShip(stand, inPackages, row.id),
      },
    ];
  });
}

/** Without ids, of all packings. */
export async function leftOf(tx: Tx, packingIds?: readonly string[]): Promise<ReadonlyMap<string, number>> {
  const packings = await tx.packing.findMany({
    where: packingIds ? { id: { in: [...packingIds] } } : {},
    select: { id: true, count: true },
  });
  const shipped = await tx.shipmentLine.groupBy({
    by: ['packingId'],
    where: packingIds ? { packingId: { in: [...packingIds] } } : {},
    _sum: { count: true },
  });
  const gone = new Map(shipped.map(({ packingId, _sum }) => [packingId, _sum.count ?? 0]));
  return new Map(packings.map(({ id, count }) => [id, count - (gone.get(id) ?? 0)]));
}

export async function shippedOf(tx: Tx, packingId: string): Promise<number> {
  const { _sum } = await tx.shipmentLine.aggregate({ where: { packingId }, _sum: { count: true } });
  return _sum.count ?? 0;
}
