import { deviationsBehind } from '../deviations/deviations-behind';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

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
  throw new Problem('still-in-use', told('held-through-it', { number: String(lost.number) }));
}
