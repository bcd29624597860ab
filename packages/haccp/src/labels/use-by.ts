import { dateOf, dayNumber } from './civil-date';

/**
 * The pack day is day 0. FDA Food Code 3-501.17 counts the day of preparation as day 1: its 7 days are 6 here. Throws a
 * RangeError on no day of the calendar, or days that are not whole from 0.
 */
export function useBy(packedOn: string, days: number): string {
  const packed = dayNumber(packedOn);
  if (packed === undefined) throw new RangeError(`"${packedOn}" is not a day of the calendar`);
  if (!Number.isSafeInteger(days) || days < 0 || days > 36_500) throw new RangeError(`${days} is not a number of days`);
  return dateOf(packed + days);
}
