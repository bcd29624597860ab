import { say, wordsOf, type Language, type Place, type Say, type Voice, type WordsOf } from '@larderbook/messages';
import { createContext, use, useContext, useMemo, type ReactNode } from 'react';

const Spoken = createContext<Voice>({ language: 'en', timeZone: 'UTC', timeStyle: 'international' });

/** Everything inside is told in this voice: its language, its clock, its way of writing days. */
export function Speaking({ voice, children }: { voice: Voice; children: ReactNode }) {
  return <Spoken value={voice}>{children}</Spoken>;
}

export const useVoice = (): Voice => useContext(Spoken);

/** Says the messages of a place in the voice around. The first to ask waits until its words are there. */
export function useSay<P extends Place>(place: P): Say<WordsOf<P>> {
  const voice = useVoice();
  const words = use(wordsOnce(place, voice.language));
  return useMemo(() => say(words, voice), [words, voice]);
}

const fetched = new Map<string, Promise<unknown>>();

/** The words of a place, fetched once; a page that needs them has asked for them with its own code. */
export function wordsOnce<P extends Place>(place: P, language: Language): Promise<WordsOf<P>> {
  const key = `${language} ${place}`;
  const known = fetched.get(key) ?? wordsOf(place, language);
  fetched.set(key, known);
  known.catch(() => fetched.delete(key)); // no network: asked for again by the next one
  return known as Promise<WordsOf<P>>;
}
