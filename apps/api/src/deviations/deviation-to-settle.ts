import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { productsHeld, type Concerned } from './held-products.queries';

type Row = { id: string; number: number; actions: number; isClosed: boolean };
export type ToSettle = Row & { concerned: Concerned };

/**
 * A closed deviation is open again once its decisions no longer cover it. Throws `not-found` and `deviation-closed`.
 */
export async function deviationsToSettle(tx: Tx, deviationIds: readonly string[]): Promise<ToSettle[]> {
  const found = await deviationsWith(tx, deviationIds);
  const closed = found.find(({ isClosed, concerned }) => isClosed && concerned.isCovered);
  if (closed) throw new Problem('deviation-closed', told('deviation-is-closed', { number: String(closed.number) }));
  return found;
}

export async function deviationToSettle(tx: Tx, deviationId: string): Promise<ToSettle> {
  const [deviation] = await deviationsToSettle(tx, [deviationId]);
  if (!deviation) throw new Problem('not-found');
  return deviation;
}

/** Includes closed ones. `without` leaves out a decision about to be corrected. */
export async function deviationsWith(tx: Tx, deviationIds: readonly string[], without?: string): Promise<ToSettle[]> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT d.id, d.number,
      (SELECT count(*)::int FROM corrective_action_now c WHERE c.deviation_id = d.id) AS actions,
      EXISTS (SELECT FROM deviation_closing_now k WHERE k.deviation_id = d.id) AS "isClosed"
    FROM deviation d WHERE d.id = ANY(${deviationIds}::uuid[])`;
  const held = await productsHeld(tx, deviationIds, without);
  return deviationIds.map((id) => {
    const [row, concerned] = [rows.find((each) => each.id === id), held.get(id)];
    if (!row || !concerned) throw new Problem('not-found');
    return { ...row, concerned };
  });
}
