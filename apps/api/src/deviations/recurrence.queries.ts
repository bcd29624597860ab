import type { Tx } from '../platform/database';
import { openedWithOf, type OpenedWith } from './what-it-is-about';

/** `of` is the deviation that repeats it. */
type Earlier = { of: string; deviationId: string; number: number; openedAt: Date; openedWith: OpenedWith; code: string };

/** Within 90 days, newest first (common practice, no source). Misses of one entry are one occurrence. */
export const earlierOnes = (tx: Tx, deviationIds: readonly string[]) => tx.$queryRaw<Earlier[]>`
  SELECT d.id AS "of", e.id AS "deviationId", e.number, e.recorded_at AS "openedAt", ${openedWithOf('e')} AS "openedWith",
    coalesce(l.code, r.code, '') AS code
  FROM deviation d
  JOIN deviation e ON e.control_point_id = d.control_point_id AND e.number < d.number
    AND e.subject_id IS DISTINCT FROM d.subject_id AND e.recorded_at >= d.recorded_at - interval '90 days'
  LEFT JOIN lot l ON l.id = e.lot_id
  LEFT JOIN receipt_now r ON r.id = e.receipt_id
  WHERE d.id = ANY(${deviationIds}::uuid[])
  ORDER BY e.number DESC`;
