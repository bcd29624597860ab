import { clocksDiffer } from '../timing/flag-times';
import { inDoubt } from './in-doubt';
import type { Verdict } from './verdict';

/**
 * A verdict that is met does not cover meat put in after the last reading. Epoch ms; clocks of two devices may differ.
 */
export function withPutInLater(verdict: Verdict, putIn: readonly number[], lastRead: number): Verdict {
  if (verdict.kind !== 'met' || putIn.every((at) => at - lastRead <= clocksDiffer)) return verdict;
  return inDoubt(verdict, 'put-in-later');
}
