import type { CriticalLimit } from './limit';
import type { Verdict } from './verdict';

/**
 * A verdict on a series of which the plan names probes that nothing was read of: said in any case. Marked pieces lose
 * weight each by itself, so a piece that was never weighed keeps a loss from being met.
 */
export function withSilent(
  verdict: Verdict,
  { kind }: Pick<CriticalLimit, 'kind'>,
  silent: readonly string[],
): Verdict {
  const noted = { ...verdict, notes: [...verdict.notes, ...silent.map((probe) => `No reading of ${probe}.`)] };
  if (kind !== 'weightLoss' || verdict.kind !== 'met' || silent.length === 0) return noted;
  return {
    ...noted,
    kind: 'undetermined',
    margin: undefined,
    spare: undefined,
    because: `The pieces that were weighed have lost enough; of ${silent.join(', ')} nothing is known.`,
    next: `Weigh ${silent.join(', ')}, or hold the lot.`,
  };
}
