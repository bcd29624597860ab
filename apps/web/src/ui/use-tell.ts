import { teller, type Teller } from '@larderbook/messages';
import { use } from 'react';
import { useVoice, wordsOnce } from './voice';

/** Tells verdicts in the voice around. The first to ask waits until the words are there. */
export function useTell(): Teller {
  const voice = useVoice();
  return teller(use(wordsOnce('verdicts', voice.language)), voice);
}
