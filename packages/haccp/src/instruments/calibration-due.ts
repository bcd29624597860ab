import { formatDuration } from '../quantity/duration';

const DAY_MS = 86_400_000;

/** When an instrument must be checked again. `dueAt` is epoch ms; absent when it was never checked. */
export type CalibrationDue = { isOverdue: boolean; dueAt?: number; says: string };

/** The age of the last good calibration against its interval. On the very instant it is not yet overdue. */
export function calibrationDue(lastAt: number | undefined, intervalDays: number, now: number): CalibrationDue {
  if (lastAt === undefined || !Number.isFinite(lastAt)) return { isOverdue: true, says: 'never calibrated' };
  if (!(intervalDays > 0) || !Number.isFinite(now)) return { isOverdue: true, says: 'no usable interval' };
  const dueAt = lastAt + intervalDays * DAY_MS;
  const left = dueAt - now;
  if (lastAt > now) return { isOverdue: true, dueAt, says: 'calibrated at a time still to come: check the clock' };
  return { isOverdue: left < 0, dueAt, says: left < 0 ? `overdue by ${sayDays(-left)}` : `due in ${sayDays(left)}` };
}

function sayDays(milliseconds: number): string {
  const days = Math.floor(milliseconds / DAY_MS);
  if (days > 0) return days === 1 ? '1 day' : `${days} days`;
  return milliseconds < 60_000 ? 'less than 1 min' : formatDuration(Math.floor(milliseconds / 60_000) * 60_000);
}
