import { say, type Arguments, type Value, type Voice, type Words, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

type Texts = WordsOf<'problem-details'> & WordsOf<'faults'> & WordsOf<'cannot-calculate'> & WordsOf<'forecasts'>;
export type Figures = Readonly<Record<string, Value | number>>;

/** What is told of a case: by which message, and with which figures. */
export type Told = { code: keyof Texts; figures?: Figures };

export const told = <Code extends keyof Texts>(code: Code, ...[figures]: Arguments<Texts[Code]>): Told => ({ code, figures });

/** The sentences of what is told, in the voice of whoever asked. */
export function sayTold(voice: Voice): (what: Told) => string {
  const { language } = voice;
  const words: Words = {
    ...allWords.forecasts[language],
    ...allWords['problem-details'][language],
    ...allWords.faults[language],
    ...allWords['cannot-calculate'][language],
  };
  const inWords = say(words, voice) as (code: string, figures?: Figures) => string;
  return ({ code, figures }) => inWords(code, figures);
}
