import { clockFor, say, type Clock, type Say } from '@larderbook/messages';
import { wordsTogether } from '@larderbook/messages/all';
import type { SheetData } from '../sheet-data';

const words = wordsTogether('limits', 'paper-sheet', 'paper-lot', 'paper-log', 'paper-plan', 'paper-figure');
export type SayOnPaper = Say<(typeof words)['en']>;

/** The clock is that of the shop. */
export type Telling = { say: SayOnPaper; clock: Clock };

/** A shop on Letter paper that names no style writes times the American way. */
export function tellingOf({ establishment, paper, language = 'en' }: SheetData): Telling {
  const { timeZone, timeStyle = paper === 'Letter' ? 'US' : 'international' } = establishment;
  const voice = { language, timeZone, timeStyle };
  return { clock: clockFor(voice), say: say(words[language], voice) };
}
