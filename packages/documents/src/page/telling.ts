import { clockFor, languages, say, type Clock, type Language, type Say, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import type { SheetData } from '../sheet-data';

const places = ['limits', 'paper-sheet', 'paper-lot', 'paper-log', 'paper-plan', 'paper-figure'] as const;

/** Every word a paper says of itself. */
type PaperWords = WordsOf<'limits'> &
  WordsOf<'paper-sheet'> &
  WordsOf<'paper-lot'> &
  WordsOf<'paper-log'> &
  WordsOf<'paper-plan'> &
  WordsOf<'paper-figure'>;
export type SayOnPaper = Say<PaperWords>;

const wordsIn = Object.fromEntries(
  (Object.keys(languages) as Language[]).map((language) => [
    language,
    Object.assign({}, ...places.map((place) => allWords[place][language])),
  ]),
) as Record<Language, PaperWords>;

/** How a paper is told: in the words of its language, by the clock on the shop's wall. */
export type Telling = { say: SayOnPaper; clock: Clock };

/** A shop on Letter paper that has not said how it writes times writes them the American way. */
export function tellingOf({ establishment, paper, language = 'en' }: SheetData): Telling {
  const { timeZone, timeStyle = paper === 'Letter' ? 'US' : 'international' } = establishment;
  const voice = { language, timeZone, timeStyle };
  return { clock: clockFor(voice), say: say(wordsIn[language], voice) };
}
