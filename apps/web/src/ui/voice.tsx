import type { Quantity } from '@larderbook/haccp';
import {
  clockFor,
  localeOf,
  say,
  spoken,
  wordsOf,
  writeNumber,
  writeQuantity,
  type Clock,
  type Language,
  type Place,
  type SayOf,
  type Spoken,
  type Voice,
  type WordsOf,
} from '@larderbook/messages';
import { createContext, use, useContext, useMemo, type ReactNode } from 'react';

const Spoken = createContext<Voice>({ language: 'en', timeZone: 'UTC', timeStyle: 'international' });

/** Everything inside is told in this language, clock and way of writing days. */
export function Speaking({ voice, children }: { voice: Voice; children: ReactNode }) {
  return <Spoken value={voice}>{children}</Spoken>;
}

export const useVoice = (): Voice => useContext(Spoken);

/** The first to ask waits for the words. */
export function useSay<P extends Place>(place: P): SayOf<P> {
  const voice = useVoice();
  const words = use(wordsOnce(place, voice.language));
  return useMemo(() => say(words, voice), [words, voice]);
}

/** Tells codes with their figures from the words of a place, in the voice around. */
export function useSpoken(place: Place): Spoken {
  const voice = useVoice();
  const words = use(wordsOnce(place, voice.language));
  return useMemo(() => spoken(words, voice), [words, voice]);
}

/** The shop's wall clock unless `zone` is another. */
export function useClock(zone?: string): Clock {
  const voice = useVoice();
  return clockFor(zone === undefined ? voice : { ...voice, timeZone: zone });
}

export function useFigures() {
  const locale = localeOf(useVoice());
  return useMemo(
    () => ({
      number: (value: number | string) => writeNumber(String(value), locale),
      quantity: ({ value, unit }: { value: number | string; unit: Quantity['unit'] }) =>
        writeQuantity({ value: String(value), unit }, locale),
    }),
    [locale],
  );
}

const fetched = new Map<string, Promise<unknown>>();

/** Fetched once; a page has asked for its words with its own code. */
export function wordsOnce<P extends Place>(place: P, language: Language): Promise<WordsOf<P>> {
  const key = `${language} ${place}`;
  const known = fetched.get(key) ?? begin(key, wordsOf(place, language));
  return known as Promise<WordsOf<P>>;
}

/** React's own marks on a promise (`status`, `value`), so that nothing waits for it again. */
function begin(key: string, words: Promise<object>): Promise<unknown> {
  fetched.set(key, words);
  words.then(
    (value) => Object.assign(words, { status: 'fulfilled', value }),
    () => fetched.delete(key), // no network: the next to ask fetches again
  );
  return words;
}
