import type { Flag } from '@larderbook/contracts';
import { calibrationDue } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';

export type LastCheck = { checkEveryDays: number; takenAt: Date | null; kind: string | null };

/** How often the instrument is to be checked, and its last check before this moment. */
export async function lastCheckOf(
  tx: Tx,
  instrumentId: string | undefined,
  takenAt: Date,
): Promise<LastCheck | undefined> {
  if (!instrumentId) return undefined;
  const [last] = await tx.$queryRaw<LastCheck[]>`
    SELECT i.check_every_days AS "checkEveryDays", c.taken_at AS "takenAt", c.verdict ->> 'kind' AS kind
    FROM instrument i
    LEFT JOIN LATERAL (SELECT taken_at, verdict FROM calibration_now WHERE instrument_id = i.id AND taken_at <= ${takenAt}
      ORDER BY taken_at DESC, recorded_at DESC LIMIT 1) c ON true
    WHERE i.id = ${instrumentId}::uuid`;
  return last;
}

/**
 * What is odd about the instrument of a judged value at the moment it was used. One whose last check failed is as good
 * as overdue. Throws `not-found` for an instrument that is not there.
 */
export function checkFlags(instrumentId: string | undefined, last: LastCheck | undefined, takenAt: Date): Flag[] {
  if (!instrumentId) return ['instrument-unknown'];
  if (!last) throw new Problem('not-found', { detail: 'There is no such instrument in this shop.' });
  return isOverdue(last, takenAt) ? ['instrument-overdue'] : [];
}

export const isOverdue = ({ checkEveryDays, takenAt, kind }: LastCheck, now: Date): boolean =>
  kind !== 'met' || calibrationDue(takenAt?.getTime(), checkEveryDays, now.getTime()).isOverdue;
