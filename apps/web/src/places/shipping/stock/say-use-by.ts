import { dayNumber } from '@larderbook/haccp';

export type UseBy = { words: string; past: boolean };

/**
 * How far off a use-by is from today, both calendar days: "in 12 days", "today", "2 days past". The day itself may
 * still be used.
 */
export function sayUseBy(useBy: string, today: string): UseBy {
  const days = (dayNumber(useBy) ?? NaN) - (dayNumber(today) ?? NaN);
  if (Number.isNaN(days)) return { words: '', past: false };
  if (days < 0) return { words: days === -1 ? '1 day past' : `${-days} days past`, past: true };
  if (days === 0) return { words: 'today', past: false };
  return { words: days === 1 ? 'tomorrow' : `in ${days} days`, past: false };
}
