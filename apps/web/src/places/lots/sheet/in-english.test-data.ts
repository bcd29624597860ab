import { localeOf, writeQuantity } from '@larderbook/messages';
import { inEnglish } from '../../../ui/in-english.test-data';
import { accountInEnglish, saidInEnglish } from '../../../ui/tell-here.test-data';
import type { SheetVoice } from './sheet-voice';

/** The lines of a day sheet as a shop in Chicago reads them. */
export const sheetInEnglish: SheetVoice = {
  say: inEnglish('day-sheet'),
  sayEntry: inEnglish('entries'),
  tell: accountInEnglish,
  tellSaid: saidInEnglish,
  figures: { quantity: ({ value, unit }) => writeQuantity({ value: String(value), unit }, localeOf({ language: 'en', timeStyle: 'US' })) },
};
