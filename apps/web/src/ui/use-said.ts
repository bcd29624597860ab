import { saidTeller, type TellSaid } from '@larderbook/messages';
import { use, useMemo } from 'react';
import { useVoice, wordsOnce } from './voice';

/** Tells what records say in their fields in the voice around. The first to ask waits until the words are there. */
export function useSaid(): TellSaid {
  const voice = useVoice();
  const words = use(wordsOnce('entries', voice.language));
  return useMemo(() => saidTeller(words, voice), [words, voice]);
}
