import type { Tell } from '@larderbook/haccp';
import {
  clockFor,
  lines,
  say,
  type LimitTeller,
  type Place,
  type Say,
  type SayLine,
  type SayOf,
  type Voice,
  type WordsOf,
} from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';
import { limitsIn, tellerIn } from '../platform/tell';

const words = wordsTogether('paper-entries', 'entries');
const wordsOfLines = wordsTogether('workings', 'findings');

/** How a paper is told of the entries it is about. */
export type Telling = {
  say: Say<(typeof words)['en']>;
  /** Says what another place of the book says of the same thing. */
  of<Other extends Place>(place: Other): SayOf<Other>;
  /** Limits, and what stands beside them in a plan. */
  limits: LimitTeller;
  /** Verdicts, with the limits that they are verdicts on. */
  tell: Tell;
  /** What stands in a line of a working, or beside a drawing. */
  line: SayLine;
  /** A calendar day of a label: "Oct 16, 2025" or "16 Oct 2025", as the rest of the paper writes days. */
  day(day: string): string;
  /** An instant on the clock of the shop. */
  instant(at: number): string;
};

export function tellingIn(voice: Voice): Telling {
  const { language } = voice;
  const clock = clockFor(voice);
  const limits = limitsIn(voice);
  const { tell, tellRemark } = tellerIn(voice);
  return {
    say: say(words[language], voice),
    of: (place) => say(allWords[place][language] as WordsOf<typeof place>, voice),
    limits,
    tell,
    line: lines(wordsOfLines[language], voice, { ...limits, tellRemark }),
    day: (day) => clock.calendarDay(day),
    instant: (at) => clock.dayAndTime(at),
  };
}
