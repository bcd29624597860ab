import type { places as english } from './en';
import type { Language } from './languages';
import type { Say, Words } from './say';

type English = typeof english;
type TableOf<Module> = Extract<Module[keyof Module], Words>;

export type Place = keyof English;

/** A place that a language lacks is a type error. */
export type Places = { [P in Place]: () => Promise<Record<string, Words>> };

/** English has the codes and parameters; `translated` holds every other language to them. */
export type WordsOf<P extends Place> = TableOf<Awaited<ReturnType<English[P]>>>;

export type SayOf<P extends Place> = Say<WordsOf<P>>;

/** A language is one folder; a place is one file in it with one table. */
const tongues: Record<Language, () => Promise<Places>> = {
  en: async () => (await import('./en')).places,
  es: async () => (await import('./es')).places,
};

export async function wordsOf<P extends Place>(place: P, language: Language): Promise<WordsOf<P>> {
  const places = await tongues[language]();
  const [table] = Object.values(await places[place]());
  return table as WordsOf<P>;
}
