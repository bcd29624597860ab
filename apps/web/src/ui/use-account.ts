import { accountTeller, type Place, type TellAccount, type Words, type WordsOf } from '@larderbook/messages';
import { use } from 'react';
import { useTell } from './use-tell';
import { useVoice, wordsOnce } from './voice';

/** The words of several places in one table, put together once for each language. */
const together = new Map<string, Words & WordsOf<'accounts'>>();

/** Tells accounts in the voice around, with the words of further places. The first to ask waits until the words are there. */
export function useAccount(...further: Place[]): TellAccount {
  const voice = useVoice();
  const places = [...further, 'entries', 'accounts'] as const;
  const asked = places.map((place) => wordsOnce(place, voice.language)); // all before any is waited for
  const teller = useTell();
  const tables = asked.map((each) => use(each));
  const key = [voice.language, ...places].join(' ');
  const words = together.get(key) ?? (Object.assign({}, ...tables) as Words & WordsOf<'accounts'>);
  together.set(key, words);
  return accountTeller(words, teller, voice);
}
