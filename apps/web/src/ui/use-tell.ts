import { limitTeller, teller, type LimitTeller, type Teller } from '@larderbook/messages';
import { use, useMemo } from 'react';
import { useVoice, wordsOnce } from './voice';

/** Tells verdicts in the voice around. The first to ask waits until the words are there. */
export function useTell(): Teller {
  const voice = useVoice();
  const asked = [wordsOnce('verdicts', voice.language), wordsOnce('limits', voice.language)] as const; // both before either is waited for
  const verdicts = use(asked[0]);
  const limits = use(asked[1]);
  return useMemo(() => teller({ verdicts, limits }, voice), [verdicts, limits, voice]);
}

/** Tells limits, and what stands beside them in a plan, in the voice around. */
export function useLimits(): LimitTeller {
  const voice = useVoice();
  const words = use(wordsOnce('limits', voice.language));
  return useMemo(() => limitTeller(words, voice), [words, voice]);
}
