import { limitTeller, teller, type LimitTeller, type Teller } from '@larderbook/messages';
import { use } from 'react';
import { useVoice, wordsOnce } from './voice';

/** The first to ask waits for the words. */
export function useTell(): Teller {
  const voice = useVoice();
  const asked = [wordsOnce('verdicts', voice.language), wordsOnce('limits', voice.language)] as const; // both before either is waited for
  return teller({ verdicts: use(asked[0]), limits: use(asked[1]) }, voice);
}

export function useLimits(): LimitTeller {
  const voice = useVoice();
  return limitTeller(use(wordsOnce('limits', voice.language)), voice);
}
