import { durationParts } from '@larderbook/haccp';
import { writeNumber } from './write-number';

/** "1 h 30 min", "16,9 s". Every language has the signs of the SI (BIPM, SI Brochure, 9th edition, table 8). */
export const writeDuration = (milliseconds: number, locale: string): string =>
  durationParts(milliseconds)
    .map(({ count, unit }) => `${writeNumber(count, locale)} ${unit}`)
    .join(' ');
