import { dateOf, dayNumber } from './civil-date';

/**
 * The use-by date so many days after packing; the pack day itself is day 0.
 * FDA Food Code 3-501.17 counts the day of preparation as day 1: its 7 days are 6 here.
 * Throws a RangeError on a date that is not on the calendar or days that are not a whole number from 0.
 */
export function useBy(packedOn: string, days: number): string {
  const packed = dayNumber(packedOn);
  if (packed === undefined) throw new RangeError(`"${packedOn}" is not a day of the calendar`);
  if (!Number.isSafeInteger(days) || days < 0 || days > 36_500) throw new RangeError(`${days} is not a number of days`);
  return dateOf(packed + days);
}
