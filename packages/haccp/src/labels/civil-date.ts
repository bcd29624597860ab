const DAY_MS = 86_400_000;

/** Days since 1970-01-01; undefined for no day of the calendar ("2026-02-30"). */
export function dayNumber(date: string): number | undefined {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date);
  if (!match) return undefined;
  const day = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) / DAY_MS;
  return dateOf(day) === date ? day : undefined;
}

export const dateOf = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

/** 1 to 366. */
export function dayOfYear(date: string): number | undefined {
  const day = dayNumber(date);
  const newYear = dayNumber(`${date.slice(0, 4)}-01-01`);
  return day === undefined || newYear === undefined ? undefined : day - newYear + 1;
}
