import type { Coded, Verdict } from './verdict';
import { worstVerdict } from './worst-verdict';

type Named = readonly [name: string, verdict: Verdict];

/** Of several chambers or pieces. */
export const worstByName = (byName: readonly Named[]): Verdict => worstOf(byName.map(named), ['one-governs', 'nameless-governs']);

/** A note says which governs. */
export function worstOf(verdicts: readonly Verdict[], [ofName, nameless]: readonly [string, string]): Verdict {
  const worst = worstVerdict(verdicts);
  if (verdicts.length === 1) return worst;
  const { probe } = worst;
  const count = verdicts.length;
  const governs: Coded = probe ? { code: ofName, figures: { probe, count } } : { code: nameless, figures: { count } };
  return { ...worst, notes: [governs, ...worst.notes] };
}

export const named = ([probe, verdict]: Named): Verdict => (probe ? { ...verdict, probe } : verdict);
