import { inDoubt } from './in-doubt';
import type { Coded, Verdict } from './verdict';

/**
 * @param silent probes or pieces of the plan without a reading: they keep the limit from being met, and are always
 * noted.
 */
export function withSilent(verdict: Verdict, silent: readonly string[]): Verdict {
  const unread = silent.map((probe): Coded => ({ code: 'probe-silent', figures: { probe } }));
  const noted = { ...verdict, notes: [...verdict.notes, ...unread] };
  if (verdict.kind !== 'met' || silent.length === 0) return noted;
  return inDoubt(noted, 'probes-silent', { probes: silent.join(', ') });
}
