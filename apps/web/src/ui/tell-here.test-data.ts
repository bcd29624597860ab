import { accountTeller, limitTeller, saidTeller, teller, type Voice } from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';

const voice: Voice = { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' };

/** Verdicts in English. */
const verdicts = teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, voice);
export const { tell } = verdicts;

/** Limits in English. */
export const limits = limitTeller(allWords.limits.en, voice);

/** Accounts in English. */
export const accountInEnglish = accountTeller(wordsTogether('entries', 'accounts').en, verdicts, voice);

/** What records say in their fields, in English. */
export const saidInEnglish = saidTeller(allWords.entries.en, voice);
