import { teller } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

/** Verdicts in English. */
export const { tell } = teller(allWords.verdicts.en, { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' });
