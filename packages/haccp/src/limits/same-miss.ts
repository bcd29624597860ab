import { canonicalJson } from '../ledger/canonical-json';
import type { Figures, Verdict } from './verdict';

/** Later readings may change these figures while the miss stays the same. */
const BESIDE: readonly string[] = ['hottest', 'reading', 'weighed', 'leastIn', 'mostIn', 'tooMuch', 'ingredient', 'meat'];

/** The same findings and figures, of the same probe or piece; any change is another miss. */
export function isSameMiss(known: Verdict | null, now: Verdict): boolean {
  if (known?.kind !== 'missed' || now.kind !== 'missed') return false;
  return known.probe === now.probe && canonicalJson(missedIn(known)) === canonicalJson(missedIn(now));
}

function missedIn(verdict: Verdict): [string, Figures][] {
  const parts = (verdict.parts ?? []).filter(({ kind }) => kind === 'missed');
  const own = parts.length > 0 ? parts : [verdict];
  return [...own, ...(verdict.also ?? [])].map(({ finding, figures }) => [finding, withoutBeside(figures)]);
}

const withoutBeside = (figures: Figures): Figures => Object.fromEntries(Object.entries(figures).filter(([name]) => !BESIDE.includes(name)));
