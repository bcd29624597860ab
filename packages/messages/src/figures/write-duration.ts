import { writeNumber } from './write-number';

/**
 * A length of time, idle parts left out: "1 h 30 min", "4 min 30 s", "16.9 s". The signs for hour, minute and second
 * are those of the International System of Units (BIPM, SI Brochure, 9th edition, table 8), the same in every language.
 */
export function writeDuration(milliseconds: number, locale: string): string {
  const total = Math.abs(milliseconds);
  if (total < 60_000) return `${writeNumber(String(Math.round(total) / 1000), locale)} s`;
  const seconds = Math.round(total / 1000);
  const parts = [
    [Math.floor(seconds / 3600), 'h'],
    [Math.floor((seconds % 3600) / 60), 'min'],
    [seconds % 60, 's'],
  ] as const;
  return parts
    .filter(([count]) => count > 0)
    .map(([count, sign]) => `${writeNumber(String(count), locale)} ${sign}`)
    .join(' ');
}
