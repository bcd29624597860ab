import type { CheckNotDoneData } from '@larderbook/documents';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';
import { productsNow } from '../products/products-now';
import type { Stretch } from './logged-entries.queries';

type Row = { code: string; productId: string; packedAt: Date };

/** A check is due before packing at the latest. Oldest first. */
export async function checksNotMade(tx: Tx, { point, from, until }: Stretch): Promise<CheckNotDoneData[]> {
  const table = Prisma.raw(point.takenAs === 'weighings' ? 'weighing_now' : 'reading_now');
  const holder = JSON.stringify({ controlPoints: [{ controlPointId: point.controlPointId }] });
  const rows = await tx.$queryRaw<Row[]>`
    SELECT l.code, l.product_id AS "productId", min(p.taken_at) AS "packedAt"
    FROM packing_now p JOIN lot l ON l.id = p.lot_id JOIN plan n ON n.id = l.plan_id AND n.content @> ${holder}::jsonb
    WHERE NOT EXISTS (
      SELECT FROM ${table} e WHERE e.lot_id = l.id AND e.control_point_id = ${point.controlPointId}::uuid)
    GROUP BY l.id, l.code, l.product_id HAVING min(p.taken_at) >= ${from} AND min(p.taken_at) < ${until} ORDER BY 3`;
  const products = await productsNow(
    tx,
    rows.map(({ productId }) => productId),
  );
  return rows.map(({ code, productId, packedAt }) => ({
    kind: 'not done',
    dueAt: packedAt.getTime(),
    lot: code,
    product: products.get(productId)?.name,
    what: point.monitoring.what,
  }));
}
