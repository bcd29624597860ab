import { say, type Say, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import type { SheetData } from '../sheet-data';
import { WallClock } from './wall-clock';

const places = ['paper-sheet', 'paper-lot', 'paper-log', 'paper-plan', 'paper-figure'] as const;

/** Every word a paper says of itself. */
type PaperWords = WordsOf<'paper-sheet'> & WordsOf<'paper-lot'> & WordsOf<'paper-log'> & WordsOf<'paper-plan'> & WordsOf<'paper-figure'>;
export type SayOnPaper = Say<PaperWords>;

/** How a paper is told: in the words of its language, by the clock on the shop's wall. */
export type Telling = { say: SayOnPaper; clock: WallClock };

export function tellingOf({ establishment, paper, language = 'en' }: SheetData): Telling {
  const clock = WallClock.of(establishment, paper, language);
  const words = Object.assign({}, ...places.map((place) => allWords[place][language])) as PaperWords;
  return { clock, say: say(words, { language, timeZone: clock.timeZone, timeStyle: clock.style }) };
}
