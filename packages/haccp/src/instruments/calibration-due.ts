const DAY_MS = 86_400_000;

/** `dueAt` is epoch ms; absent when never checked. */
export type CalibrationDue = { isOverdue: boolean; dueAt?: number };

/** Not yet overdue on the very instant. A calibration still to come and an unusable interval are overdue. */
export function calibrationDue(lastAt: number | undefined, intervalDays: number, now: number): CalibrationDue {
  if (lastAt === undefined || !Number.isFinite(lastAt)) return { isOverdue: true };
  if (!(intervalDays > 0) || !Number.isFinite(now)) return { isOverdue: true };
  const dueAt = lastAt + intervalDays * DAY_MS;
  return { isOverdue: lastAt > now || dueAt < now, dueAt };
}
