import { inDoubt } from './in-doubt';
import type { Verdict } from './verdict';

/**
 * A verdict on a series of which the plan names probes or pieces that nothing was read of. The worst of them decides,
 * and of a silent one nobody knows: it keeps the limit from being met, and is said in any case.
 */
export function withSilent(verdict: Verdict, silent: readonly string[]): Verdict {
  const noted = { ...verdict, notes: [...verdict.notes, ...silent.map((probe) => `No reading of ${probe}.`)] };
  if (verdict.kind !== 'met' || silent.length === 0) return noted;
  const names = silent.join(', ');
  return inDoubt(
    noted,
    `What was read is within the limit; of ${names} nothing was read, and the plan asks for it.`,
    `Read ${names}, or hold the lot. A plan that follows fewer names fewer.`,
  );
}
