import { limitTeller, teller, type LimitTeller, type Teller, type Voice } from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';

export const english: Voice = { language: 'en', timeZone: 'UTC', timeStyle: 'US' };

export const { tell } = teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, english);

export const tellerIn = (voice: Voice): Teller =>
  teller({ verdicts: allWords.verdicts[voice.language], limits: allWords.limits[voice.language] }, voice);

const wordsOfLimits = wordsTogether('published', 'limits');

export const limitsIn = (voice: Voice): LimitTeller => limitTeller(wordsOfLimits[voice.language], voice);

export const englishLimits = limitsIn(english);
