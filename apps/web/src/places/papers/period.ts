import { dateOf, dayNumber } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';

export const periods = ['this week', 'this month', 'last 90 days', 'own dates'] as const;
export type PeriodName = (typeof periods)[number];
/** Calendar days in the shop, both included. */
export type Period = { from: string; to: string };

/** Days; the server prints no longer period at once. */
const mostDays = 400;

/** The period ends today. The week begins on Monday (ISO 8601). */
export function periodOf(name: Exclude<PeriodName, 'own dates'>, today: string): Period {
  const day = dayNumber(today) ?? NaN;
  const monday = day - ((day + 3) % 7); // day 0, 1 January 1970, was a Thursday
  const from = {
    'this week': () => dateOf(monday),
    'this month': () => `${today.slice(0, 8)}01`,
    'last 90 days': () => dateOf(day - 89),
  }[name]();
  return { from, to: today };
}

/** Faults are keyed by the day that is wrong; none when the period can be printed. */
export function periodFaults({ from, to }: Period, say: SayOf<'papers'>): Partial<Period> {
  const [first, last] = [dayNumber(from), dayNumber(to)];
  if (first === undefined) return { from: say('first-day-missing') };
  if (last === undefined) return { to: say('last-day-missing') };
  if (last < first) return { to: say('last-before-first') };
  const days = last - first + 1;
  return days > mostDays ? { to: say('too-many-days', { days, most: mostDays }) } : {};
}
