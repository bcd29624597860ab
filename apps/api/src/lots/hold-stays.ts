import { deviationsBehind } from '../deviations/deviations-behind';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/**
 * A hold that came with a source ends only by decisions. A change of source that would end it throws `still-in-use`.
 */
export async function holdStays(tx: Tx, lotId: string, change: () => Promise<unknown>): Promise<void> {
  const before = await deviationsBehind(tx, [lotId]);
  await change();
  const after = await deviationsBehind(tx, [lotId]);
  const lost = before.find(({ isOpen, deviationId }) => isOpen && !after.some((still) => still.deviationId === deviationId));
  if (!lost) return;
  throw new Problem('still-in-use', told('held-through-it', { number: String(lost.number) }));
}
