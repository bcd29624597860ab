import { judgeWhatWentIn } from '../lots/judge-what-went-in';
import { lotToRecordOn } from '../lots/lot-to-record-on';
import { lotsAfter } from '../lots/reached-lots.queries';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';

/**
 * Includes lots reached through rework. Returns the first deviation that this opened, or that stands over the same
 * miss.
 */
export async function judgeWhatWasMade(
  tx: Tx,
  { receiptId, subjectId, takenAt }: { receiptId: string; subjectId: string; takenAt: Date },
  by: Person,
  at: Date,
): Promise<string | undefined> {
  let first: string | undefined;
  for (const lotId of await lotsAfter(tx, [receiptId])) {
    const { controlPoints } = await lotToRecordOn(tx, lotId);
    const { deviationId } = await judgeWhatWentIn(tx, { lotId, subjectId, takenAt }, controlPoints, by, at);
    first ??= deviationId;
  }
  return first;
}
