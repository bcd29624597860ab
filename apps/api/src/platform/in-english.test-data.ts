import { sayTold } from './told';

/** What is told, as an English reader reads it. */
export const inEnglish = sayTold({ language: 'en', timeZone: 'UTC', timeStyle: 'international' });
