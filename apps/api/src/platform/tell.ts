import { teller } from '@larderbook/messages';
import { allWords } from '@larderbook/messages/all';

/** Verdicts in English, for what the server writes itself: papers, and sentences about a lot. */
export const { tell, tellRemark } = teller(allWords.verdicts.en, { language: 'en', timeZone: 'UTC', timeStyle: 'US' });
