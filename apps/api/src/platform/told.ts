import type { Account } from '@larderbook/contracts';
import { say, type Language, type ParametersOf, type Value, type Voice, type Words, type WordsOf } from '@larderbook/messages';
import { wordsTogether } from '@larderbook/messages/all';
import { accountsIn } from './account';

type Texts = WordsOf<'problem-details'> & WordsOf<'faults'> & WordsOf<'set-faults'> & WordsOf<'cannot-calculate'> & WordsOf<'workings'>;

/** Words within a sentence, by their code: what a substance or a process is called, what is wrong with a limit. */
export type Name = {
  code: keyof (WordsOf<'limits'> & WordsOf<'products'> & WordsOf<'set-faults'>);
  figures?: Readonly<Record<string, Value | number>>;
};
type Figures = Readonly<Record<string, Value | Name | Account>>;

export type Told = { code: keyof Texts; figures?: Figures };

type FiguresOf<Text extends string> = { [Given in keyof ParametersOf<Text>]: ParametersOf<Text>[Given] | Name | Account };
type Given<Text extends string> = keyof ParametersOf<Text> extends never ? [] : [FiguresOf<Text>];

export const told = <Code extends keyof Texts>(code: Code, ...[figures]: Given<Texts[Code]>): Told => ({
  code,
  figures: figures as Figures | undefined,
});

const words: Record<Language, Words> = wordsTogether(
  'limits',
  'products',
  'workings',
  'problem-details',
  'faults',
  'set-faults',
  'cannot-calculate',
);

export function sayTold(voice: Voice): (what: Told) => string {
  const inWords = say(words[voice.language], voice) as (code: string, figures?: Record<string, Value | number>) => string;
  const written = (figure: Value | Name | Account): Value => {
    if (isAccount(figure)) return accountsIn(voice)(figure);
    if (typeof figure !== 'object' || !('code' in figure)) return figure;
    return figure.code in words[voice.language] ? inWords(figure.code, figure.figures) : figure.code; // a published text names itself
  };
  return ({ code, figures = {} }) =>
    inWords(code, Object.fromEntries(Object.entries(figures).map(([name, figure]) => [name, written(figure)])));
}

const isAccount = (figure: Value | Name | Account): figure is Account => Array.isArray(figure) && typeof figure[0] === 'object';
