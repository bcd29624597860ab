import { say, type LimitTeller, type SayOf, type Voice, type WordsOf } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';
import { limitsIn } from '../platform/tell';

export type Reasons = { say: SayOf<'reassessing'>; limits: LimitTeller };

export const reasonsIn = (voice: Voice): Reasons => ({
  say: say(allWords.reassessing[voice.language] as WordsOf<'reassessing'>, voice),
  limits: limitsIn(voice),
});
