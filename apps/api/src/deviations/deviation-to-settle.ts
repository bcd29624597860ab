import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { productsHeld } from './held-products.queries';

/**
 * Deviations that are still open, with what they concern. One that was closed is open again when its decisions no
 * longer cover what it concerns. Throws `not-found` and `deviation-closed`.
 */
export async function deviationsToSettle(tx: Tx, deviationIds: readonly string[]) {
  const rows = await tx.deviation.findMany({
    where: { id: { in: [...deviationIds] } },
    select: { id: true, number: true, controlPointId: true, _count: { select: { actions: true, closings: true } } },
  });
  const held = await productsHeld(tx, deviationIds);
  return deviationIds.map((id) => {
    const deviation = rows.find((row) => row.id === id);
    const concerned = held.get(id);
    if (!deviation || !concerned) throw new Problem('not-found');
    const { number, _count } = deviation;
    const isClosed = _count.closings > 0;
    if (isClosed && concerned.isCovered) {
      throw new Problem('deviation-closed', { detail: `Deviation ${number} is closed. Open another if there is more.` });
    }
    return { id, number, actions: _count.actions, isClosed, concerned };
  });
}

/** One of them. Throws the same. */
export async function deviationToSettle(tx: Tx, deviationId: string) {
  const [deviation] = await deviationsToSettle(tx, [deviationId]);
  if (!deviation) throw new Problem('not-found');
  return deviation;
}
