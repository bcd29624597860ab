import type { Verdict, VerdictKind } from './verdict';

/** The worse a verdict, the lower its rank. */
export const RANK: Record<VerdictKind, number> = { missed: 0, undetermined: 1, met: 2 };

/**
 * The verdict that governs: missed before undetermined before met; among equals the one with the least to spare.
 * Throws a RangeError when there is none.
 */
export function worstVerdict<V extends Verdict>(verdicts: readonly V[]): V {
  const [first, ...others] = verdicts;
  if (!first) throw new RangeError('There is no verdict to choose from');
  return others.reduce((worst, verdict) => (isWorse(verdict, worst) ? verdict : worst), first);
}

function isWorse(verdict: Verdict, than: Verdict): boolean {
  const difference = RANK[verdict.kind] - RANK[than.kind];
  return difference < 0 || (difference === 0 && (verdict.spare ?? Infinity) < (than.spare ?? Infinity));
}
