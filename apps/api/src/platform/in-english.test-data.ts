import type { Voice } from '@larderbook/messages';
import { limitsIn } from './tell';
import { sayTold } from './told';

export const english: Voice = { language: 'en', timeZone: 'UTC', timeStyle: 'US' };

export const englishLimits = limitsIn(english);

/** What is told, as an English reader reads it. */
export const inEnglish = sayTold({ ...english, timeStyle: 'international' });
