import { limitTeller, teller, type LimitTeller, type Teller, type Voice } from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';

export const tellerIn = (voice: Voice): Teller =>
  teller({ verdicts: allWords.verdicts[voice.language], limits: allWords.limits[voice.language] }, voice);

const wordsOfLimits = wordsTogether('published', 'limits');

export const limitsIn = (voice: Voice): LimitTeller => limitTeller(wordsOfLimits[voice.language], voice);
