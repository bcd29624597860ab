import type { Coded, Verdict } from './verdict';
import { worstVerdict } from './worst-verdict';

/** Of several chambers or pieces; a note says which governs. */
export function worstByName(byName: (readonly [probe: string, verdict: Verdict])[]): Verdict {
  const named = byName.map(([probe, verdict]) => (probe ? { ...verdict, probe } : verdict));
  const worst = worstVerdict(named);
  if (named.length === 1) return worst;
  const { probe } = worst;
  const count = named.length;
  const governs: Coded = probe ? { code: 'one-governs', figures: { probe, count } } : { code: 'nameless-governs', figures: { count } };
  return { ...worst, notes: [governs, ...worst.notes] };
}
