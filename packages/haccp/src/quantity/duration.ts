import { decimalText } from './decimal';

/** A length of time by hours, minutes and seconds, idle parts left out. Below a minute the seconds keep thousandths. */
export function durationParts(milliseconds: number): { count: string; unit: 'h' | 'min' | 's' }[] {
  const total = Math.abs(milliseconds);
  if (total < 60_000) return [{ count: decimalText(Math.round(total), 3), unit: 's' }];
  const seconds = Math.round(total / 1000);
  const parts = [
    [Math.floor(seconds / 3600), 'h'],
    [Math.floor((seconds % 3600) / 60), 'min'],
    [seconds % 60, 's'],
  ] as const;
  return parts.filter(([count]) => count > 0).map(([count, unit]) => ({ count: String(count), unit }));
}

/** A length of time in words: "1 h 30 min", "4 min 30 s", "16.9 s". */
export function formatDuration(milliseconds: number): string {
  if (!Number.isFinite(milliseconds)) return 'an unknown time';
  return durationParts(milliseconds)
    .map(({ count, unit }) => `${count} ${unit}`)
    .join(' ');
}

/** A length of time to the minute, for estimates: "about 3 h 1 min". */
export const formatAbout = (milliseconds: number): string =>
  Math.abs(milliseconds) < 60_000 ? 'less than 1 min' : `about ${formatDuration(Math.round(milliseconds / 60_000) * 60_000)}`;

/** Whole milliseconds in a printed time; the guideline's tables print tenths of a second. */
export const millisecondsOf = (seconds: number): number => Math.round(seconds * 1000);
