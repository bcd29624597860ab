import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';

/** A deviation that is still open, with what has been recorded on it. Throws `not-found` and `deviation-closed`. */
export async function deviationToSettle(tx: Tx, deviationId: string) {
  const deviation = await tx.deviation.findFirst({
    where: { id: deviationId },
    select: { number: true, _count: { select: { actions: true, dispositions: true, closings: true } } },
  });
  if (!deviation) throw new Problem('not-found');
  const { actions, dispositions, closings } = deviation._count;
  if (closings > 0) {
    throw new Problem('deviation-closed', {
      detail: `Deviation ${deviation.number} is closed. Open another if there is more.`,
    });
  }
  return { number: deviation.number, actions, hasDisposition: dispositions > 0 };
}
