import { limitTeller, teller, type LimitTeller, type Teller } from '@larderbook/messages';
import { use } from 'react';
import { useVoice, wordsOnce } from './voice';

/** Tells verdicts in the voice around. The first to ask waits until the words are there. */
export function useTell(): Teller {
  const voice = useVoice();
  const asked = [wordsOnce('verdicts', voice.language), wordsOnce('limits', voice.language)] as const; // both before either is waited for
  return teller({ verdicts: use(asked[0]), limits: use(asked[1]) }, voice);
}

/** Tells limits, and what stands beside them in a plan, in the voice around. */
export function useLimits(): LimitTeller {
  const voice = useVoice();
  return limitTeller(use(wordsOnce('limits', voice.language)), voice);
}
