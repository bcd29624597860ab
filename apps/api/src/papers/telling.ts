import {
  clockFor,
  languages,
  lines,
  say,
  type Language,
  type LimitTeller,
  type Place,
  type Say,
  type SayLine,
  type SayOf,
  type Voice,
  type WordsOf,
} from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { limitsIn, tellerIn } from '../platform/tell';

type PaperWords = WordsOf<'paper-entries'> & WordsOf<'entries'>;

const wordsIn = Object.fromEntries(
  (Object.keys(languages) as Language[]).map((language) => [
    language,
    { ...allWords['paper-entries'][language], ...allWords.entries[language] },
  ]),
) as Record<Language, PaperWords>;

/** How a paper is told of the entries it is about. */
export type Telling = {
  say: Say<PaperWords>;
  /** Says what another place of the book says of the same thing. */
  of<Other extends Place>(place: Other): SayOf<Other>;
  /** Limits, and what stands beside them in a plan. */
  limits: LimitTeller;
  /** What stands in a line of a working, or beside a drawing. */
  line: SayLine;
  /** A calendar day of a label: "Oct 16, 2025" or "16 Oct 2025", as the rest of the paper writes days. */
  day(day: string): string;
  /** An instant on the clock of the shop. */
  instant(at: number): string;
};

export function tellingIn(voice: Voice): Telling {
  const clock = clockFor(voice);
  return {
    say: say(wordsIn[voice.language], voice),
    of: (place) => say(allWords[place][voice.language] as WordsOf<typeof place>, voice),
    limits: limitsIn(voice),
    line: lines([allWords.workings[voice.language], allWords.findings[voice.language]], voice, {
      ...limitsIn(voice),
      ...tellerIn(voice),
    }),
    day: (day) => clock.calendarDay(day),
    instant: (at) => clock.dayAndTime(at),
  };
}
