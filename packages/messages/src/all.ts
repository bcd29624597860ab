import { all as en } from './en/all';
import { all as es } from './es/all';
import type { Language } from './languages';
import type { Words } from './say';
import type { Place, WordsOf } from './words';

/** The places of English: every language must have them. */
export type AllOf = Record<Place, Words>;

type AllWords = { [P in Place]: Record<Language, WordsOf<P>> };

const tongues = { en, es } satisfies Record<Language, AllOf>;

/** Only the server uses this: it speaks every language at once. */
export const allWords = Object.fromEntries(
  Object.keys(en).map((place) => [
    place,
    Object.fromEntries(Object.entries(tongues).map(([language, words]) => [language, words[place as Place]])),
  ]),
) as AllWords;

type Together<Several extends readonly Place[]> = Several extends readonly [
  infer First extends Place,
  ...infer Others extends readonly Place[],
]
  ? WordsOf<First> & Together<Others>
  : unknown;

/** When two places share a code, the later place counts. */
export const wordsTogether = <const Several extends readonly Place[]>(...places: Several): Record<Language, Together<Several>> =>
  Object.fromEntries(
    Object.keys(tongues).map((language) => [language, Object.assign({}, ...places.map((place) => allWords[place][language as Language]))]),
  ) as Record<Language, Together<Several>>;
