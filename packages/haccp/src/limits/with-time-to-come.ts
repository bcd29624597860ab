import { clocksDiffer } from '../timing/flag-times';
import { inDoubt } from './in-doubt';
import type { Verdict } from './verdict';

/**
 * Nobody can have read what is dated later than it was kept. @param late milliseconds from its own time to its arrival;
 * negative when dated ahead
 */
export function withTimeToCome(verdict: Verdict, late: number): Verdict {
  return verdict.kind === 'met' && -late > clocksDiffer ? inDoubt(verdict, 'time-to-come') : verdict;
}
