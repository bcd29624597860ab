import type { ClockDoubt } from '../thermal/clock-doubt';
import { WRONG_CLOCK } from './say-doubted';
import type { Verdict } from './verdict';

/** A clock in doubt proves nothing: what would be met is undetermined until a person calls the time right. */
export function withClockDoubt(verdict: Verdict, [doubt]: readonly ClockDoubt[]): Verdict {
  if (!doubt || verdict.kind !== 'met') return verdict;
  const next = 'Correct the reading, or say that its time is right, and why.';
  return { ...verdict, kind: 'undetermined', because: WRONG_CLOCK[doubt], next };
}
