import { dayNumber } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';

const daysTo = (useBy: string, today: string): number => (dayNumber(useBy) ?? NaN) - (dayNumber(today) ?? NaN);

/** The day itself may still be used. Both are calendar days. */
export const isPast = (useBy: string, today: string): boolean => daysTo(useBy, today) < 0;

/** Between calendar days: "in 12 days", "today", "2 days past". */
export function distanceTo(useBy: string, today: string, say: SayOf<'shipping'>): string {
  const days = daysTo(useBy, today);
  if (Number.isNaN(days)) return '';
  if (days < 0) return say('days-past', { days: -days });
  if (days === 0) return say('use-by-today');
  return days === 1 ? say('use-by-tomorrow') : say('use-by-in', { days });
}
