import { inDoubt } from './in-doubt';
import type { Coded, Verdict } from './verdict';

/**
 * A verdict on a series of which the plan names probes or pieces that nothing was read of. The worst of them decides,
 * and of a silent one nobody knows: it keeps the limit from being met, and is said in any case.
 */
export function withSilent(verdict: Verdict, silent: readonly string[]): Verdict {
  const unread = silent.map((probe): Coded => ({ code: 'probe-silent', figures: { probe } }));
  const noted = { ...verdict, notes: [...verdict.notes, ...unread] };
  if (verdict.kind !== 'met' || silent.length === 0) return noted;
  return inDoubt(noted, 'probes-silent', { probes: silent.join(', ') });
}
