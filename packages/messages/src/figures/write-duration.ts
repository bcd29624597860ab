import { durationParts } from '@larderbook/haccp';
import { writeNumber } from './write-number';

/**
 * A length of time as a reader writes its figures: "1 h 30 min", "4 min 30 s", "16,9 s". The signs for hour, minute and
 * second are those of the International System of Units (BIPM, SI Brochure, 9th edition, table 8), the same in every
 * language.
 */
export const writeDuration = (milliseconds: number, locale: string): string =>
  durationParts(milliseconds)
    .map(({ count, unit }) => `${writeNumber(count, locale)} ${unit}`)
    .join(' ');
