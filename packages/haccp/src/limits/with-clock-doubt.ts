import type { ClockDoubt } from '../thermal/clock-doubt';
import { inDoubt } from './in-doubt';
import { WRONG_CLOCK } from './say-doubted';
import type { Verdict } from './verdict';

/** A clock in doubt proves nothing: what would be met is undetermined until a person calls the time right. */
export function withClockDoubt(verdict: Verdict, [doubt]: readonly ClockDoubt[]): Verdict {
  if (!doubt || verdict.kind !== 'met') return verdict;
  return inDoubt(verdict, WRONG_CLOCK[doubt], 'Correct the reading, or say that its time is right, and why.');
}
