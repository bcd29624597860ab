import { limitTeller, teller, type LimitTeller, type Teller, type Voice } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

export const english: Voice = { language: 'en', timeZone: 'UTC', timeStyle: 'US' };

/** Verdicts in English, for what the server writes itself: papers, and sentences about a lot. */
export const { tell } = teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, english);

/** Tells verdicts as somebody reads them. */
export const tellerIn = (voice: Voice): Teller =>
  teller({ verdicts: allWords.verdicts[voice.language], limits: allWords.limits[voice.language] }, voice);

/** Tells limits as somebody reads them. */
export const limitsIn = (voice: Voice): LimitTeller => limitTeller(allWords.limits[voice.language], voice);

/** Limits in English, for sentences that the server writes itself. */
export const englishLimits = limitsIn(english);
