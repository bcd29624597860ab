import type { Verdict } from './verdict';
import { worstVerdict } from './worst-verdict';

/** Of several chambers or pieces, each by its name, the one that governs; it is said that it does. */
export function worstByName(byName: (readonly [probe: string, verdict: Verdict])[]): Verdict {
  const named = byName.map(([probe, verdict]) => (probe ? { ...verdict, probe } : verdict));
  const worst = worstVerdict(named);
  if (named.length === 1) return worst;
  const governs = `${worst.probe ?? 'The one without a name'} governs: the worst of ${named.length}.`;
  return { ...worst, notes: [governs, ...worst.notes] };
}
