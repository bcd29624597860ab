import type { Person } from '../platform/person';

export type SayTime = {
  /** A calendar day of a label: "Oct 16, 2025" or "16 Oct 2025", as the rest of the paper writes days. */
  day(day: string): string;
  /** An instant on the clock of the shop. */
  instant(at: number): string;
};

export function sayTimeFor({ timeZone, paper }: Person['establishment']): SayTime {
  const locale = paper === 'Letter' ? 'en-US' : 'en-GB';
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  const instants = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short', timeZone });
  return { day: (day) => days.format(new Date(day)), instant: (at) => asOnTheClock(instants.format(at)) };
}

/** "2:05 pm", as the clock of the sheets writes it. */
const asOnTheClock = (said: string): string => said.replace(/\s([AP]M)$/, (_, half: string) => ` ${half.toLowerCase()}`);
