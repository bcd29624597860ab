import { localeOf, writeQuantity } from '@larderbook/messages';
import { inEnglish } from '../../../ui/in-english.test-data';
import type { SheetVoice } from './sheet-voice';

/** The lines of a day sheet as a shop in Chicago reads them. */
export const sheetInEnglish: SheetVoice = {
  say: inEnglish('day-sheet'),
  sayEntry: inEnglish('entries'),
  figures: { quantity: ({ value, unit }) => writeQuantity({ value: String(value), unit }, localeOf({ language: 'en', timeStyle: 'US' })) },
};
