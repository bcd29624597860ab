const DAY_MS = 86_400_000;

/** When an instrument must be checked again. `dueAt` is epoch ms; absent when it was never checked. */
export type CalibrationDue = { isOverdue: boolean; dueAt?: number };

/**
 * The age of the last good calibration against its interval. On the very instant it is not yet overdue; one that is
 * still to come, or an interval that is none, is.
 */
export function calibrationDue(lastAt: number | undefined, intervalDays: number, now: number): CalibrationDue {
  if (lastAt === undefined || !Number.isFinite(lastAt)) return { isOverdue: true };
  if (!(intervalDays > 0) || !Number.isFinite(now)) return { isOverdue: true };
  const dueAt = lastAt + intervalDays * DAY_MS;
  return { isOverdue: lastAt > now || dueAt < now, dueAt };
}
