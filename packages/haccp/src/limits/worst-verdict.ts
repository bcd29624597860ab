import type { Verdict, VerdictKind } from './verdict';

/** The worse, the lower. */
export const RANK: Record<VerdictKind, number> = { missed: 0, undetermined: 1, met: 2 };

/** Missed before undetermined before met; among equals the least to spare. Throws a RangeError when there is none. */
export function worstVerdict<V extends Verdict>(verdicts: readonly V[]): V {
  const [first, ...others] = verdicts;
  if (!first) throw new RangeError('There is no verdict to choose from');
  return others.reduce((worst, verdict) => (isWorse(verdict, worst) ? verdict : worst), first);
}

function isWorse(verdict: Verdict, than: Verdict): boolean {
  const difference = RANK[verdict.kind] - RANK[than.kind];
  return difference < 0 || (difference === 0 && (verdict.spare ?? Infinity) < (than.spare ?? Infinity));
}
