import type { Tell } from '@larderbook/haccp';
import {
  clockFor,
  lines,
  saidTeller,
  say,
  type LimitTeller,
  type Place,
  type Say,
  type SayLine,
  type SayOf,
  type TellAccount,
  type TellSaid,
  type Voice,
  type WordsOf,
} from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';
import { accountsIn } from '../platform/account';
import { limitsIn, tellerIn } from '../platform/tell';

const words = wordsTogether('paper-entries', 'entries');
const wordsOfLines = wordsTogether('workings', 'findings');

export type Telling = {
  say: Say<(typeof words)['en']>;
  of<Other extends Place>(place: Other): SayOf<Other>;
  limits: LimitTeller;
  tell: Tell;
  account: TellAccount;
  said: TellSaid;
  line: SayLine;
  /** A calendar day: "Oct 16, 2025" or "16 Oct 2025". */
  day(day: string): string;
  /** Uses the time zone of the shop. */
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
    account: accountsIn(voice),
    said: saidTeller(words[language], voice),
    line: lines(wordsOfLines[language], voice, { ...limits, tellRemark }),
    day: (day) => clock.calendarDay(day),
    instant: (at) => clock.dayAndTime(at),
  };
}
