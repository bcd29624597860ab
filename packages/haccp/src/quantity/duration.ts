import { decimalText } from './decimal';

/** Zero parts are left out. Below a minute the seconds keep thousandths. */
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

/** The guideline's tables print tenths of a second. */
export const millisecondsOf = (seconds: number): number => Math.round(seconds * 1000);
