import type { ClockDoubt } from '../thermal/clock-doubt';
import { inDoubt } from './in-doubt';
import { notedClock } from './noted-doubts';
import type { Verdict } from './verdict';

/** A clock in doubt proves nothing until a person calls the time right. */
export function withClockDoubt(verdict: Verdict, doubts: readonly ClockDoubt[]): Verdict {
  const [doubt] = notedClock(doubts);
  return doubt && verdict.kind === 'met' ? inDoubt(verdict, 'clock-in-doubt', { doubt }) : verdict;
}
