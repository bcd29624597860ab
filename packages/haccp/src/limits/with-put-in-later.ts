import { clocksDiffer } from '../timing/flag-times';
import { inDoubt } from './in-doubt';
import type { Verdict } from './verdict';

/**
 * A verdict on a curve that meat, or rework, went in after: it was not there when the core was read, so what was met says
 * nothing of it. Instants are epoch ms; clocks of two devices may differ.
 * @param putIn when each went in
 */
export function withPutInLater(verdict: Verdict, putIn: readonly number[], lastRead: number): Verdict {
  if (verdict.kind !== 'met' || putIn.every((at) => at - lastRead <= clocksDiffer)) return verdict;
  return inDoubt(verdict, 'put-in-later');
}
