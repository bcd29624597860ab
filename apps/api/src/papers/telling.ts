import { localeOf, say, type Say, type Voice, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

/** How a paper is told of the entries it is about. */
export type Telling = {
  say: Say<WordsOf<'paper-entries'>>;
  /** A calendar day of a label: "Oct 16, 2025" or "16 Oct 2025", as the rest of the paper writes days. */
  day(day: string): string;
  /** An instant on the clock of the shop. */
  instant(at: number): string;
};

export function tellingIn(voice: Voice): Telling {
  const { timeZone, language } = voice;
  const locale = localeOf(voice);
  const days = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' });
  const instants = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short', timeZone });
  return {
    say: say(allWords['paper-entries'][language] as WordsOf<'paper-entries'>, voice),
    day: (day) => days.format(new Date(day)),
    instant: (at) => asOnTheClock(instants.format(at)),
  };
}

/** "2:05 pm", as the clock of the sheets writes it. */
const asOnTheClock = (said: string): string => said.replace(/\s([AP]M)$/, (_, half: string) => ` ${half.toLowerCase()}`);
