import { deviationsBehind } from '../deviations/deviations-behind';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';

/**
 * Makes a change to what went into a lot. A hold that came with a delivery or an earlier lot ends by decisions: saying that
 * it was another one does not end it. Throws `still-in-use`, and nothing is kept.
 */
export async function holdStays(tx: Tx, lotId: string, change: () => Promise<unknown>): Promise<void> {
  const before = await deviationsBehind(tx, [lotId]);
  await change();
  const after = await deviationsBehind(tx, [lotId]);
  const lost = before.find(({ isOpen, deviationId }) => isOpen && !after.some((still) => still.deviationId === deviationId));
  if (!lost) return;
  const detail = `Deviation ${lost.number} holds this lot through it. Decide what becomes of the product and close it, then correct this.`;
  throw new Problem('still-in-use', { detail });
}
