import type { CheckData } from '../entry-data';
import { bothTimes } from './entered';

/** Checks that are not told one by one: all of them passed. */
export const moreChecks = (between: number): string =>
  between === 1 ? '1 more check between, passed' : `${between} more checks between, all passed`;

export const noCheck = 'no check of it was known';

/** "Checked 1 Sep 2025, 08:00, by Nora Vale: …"; one that failed after the last use says so. */
export function checkInWords({ by, result, failed, later, ...stated }: CheckData, say: (at: number) => string): string {
  const verb = later ? 'next check after its use, ' : 'checked ';
  return `${verb}${bothTimes(stated, say)} by ${by}: ${result}${failed ? ', failed' : ''}`;
}
