import { clocksDiffer } from '../timing/flag-times';
import { inDoubt } from './in-doubt';
import type { Verdict } from './verdict';

/**
 * A single value or answer that is dated later than it was kept: nobody can have read it yet, and it meets nothing.
 * @param late how long after its own time it was kept (ms); below zero when it is dated ahead
 */
export function withTimeToCome(verdict: Verdict, late: number): Verdict {
  return verdict.kind === 'met' && -late > clocksDiffer ? inDoubt(verdict, 'time-to-come') : verdict;
}
