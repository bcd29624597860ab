import { clocksDiffer } from '../timing/flag-times';
import { inDoubt } from './in-doubt';
import type { Verdict } from './verdict';

/**
 * Meat or rework put in after the last reading is not covered by a verdict that is met. Instants are epoch ms; clocks
 * of two devices may differ.
 */
export function withPutInLater(verdict: Verdict, putIn: readonly number[], lastRead: number): Verdict {
  if (verdict.kind !== 'met' || putIn.every((at) => at - lastRead <= clocksDiffer)) return verdict;
  return inDoubt(verdict, 'put-in-later');
}
