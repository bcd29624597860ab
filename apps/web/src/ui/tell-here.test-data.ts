import { limitTeller, teller, type Voice } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

const voice: Voice = { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' };

/** Verdicts in English. */
export const { tell } = teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, voice);

/** Limits in English. */
export const limits = limitTeller(allWords.limits.en, voice);
