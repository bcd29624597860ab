import { all as en } from './en/all';
import { all as es } from './es/all';
import type { Language } from './languages';
import type { Words } from './say';
import type { Place, WordsOf } from './words';

/** What every language has to have: the places of English. */
export type AllOf = Record<Place, Words>;

type AllWords = { [P in Place]: Record<Language, WordsOf<P>> };

const tongues = { en, es } satisfies Record<Language, AllOf>;

/** All messages in all languages, for a server, which has them at hand and speaks every language at once. */
export const allWords = Object.fromEntries(
  Object.keys(en).map((place) => [
    place,
    Object.fromEntries(Object.entries(tongues).map(([language, words]) => [language, words[place as Place]])),
  ]),
) as AllWords;
