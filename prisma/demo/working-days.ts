/** The shop is shut on Sundays; suppliers come from Monday to Friday. All by the clock of whoever looks. */

/** The moment, or the same time on the last day before it that the shop is open. */
export const whenOpen = (moment: Date): Date => onEarlierDay(moment, (weekday) => weekday !== 0);

/** The moment, or the same time on the last day before it that suppliers come. */
export const whenSuppliersCome = (moment: Date): Date => onEarlierDay(moment, (weekday) => weekday > 0 && weekday < 6);

/** A time of the next day on which the shop is open. */
export function nextOpenDay(moment: Date, hour: number, minute: number): Date {
  const next = daysLater(moment, 1);
  next.setHours(hour, minute, 0, 0);
  return next.getDay() === 0 ? daysLater(next, 1) : next;
}

export function daysLater(moment: Date, days: number): Date {
  const other = new Date(moment);
  other.setDate(other.getDate() + days);
  return other;
}

function onEarlierDay(moment: Date, fits: (weekday: number) => boolean): Date {
  let day = moment;
  while (!fits(day.getDay())) day = daysLater(day, -1);
  return day;
}
