import { durationParts } from '@larderbook/haccp';
import { writeNumber } from './write-number';

/**
 * "1 h 30 min", "4 min 30 s", "16,9 s". The signs are those of the SI in every language (BIPM, SI Brochure, 9th
 * edition, table 8).
 */
export const writeDuration = (milliseconds: number, locale: string): string =>
  durationParts(milliseconds)
    .map(({ count, unit }) => `${writeNumber(count, locale)} ${unit}`)
    .join(' ');
