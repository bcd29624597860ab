import { canonicalJson } from '../ledger/canonical-json';
import type { Figures, Verdict } from './verdict';

/** What is left of a time passes while a miss stays what it is. */
const OF_THE_CLOCK: readonly string[] = ['left', 'leftThen'];

/** Later readings may change these figures while the miss stays the same. */
const BESIDE: readonly string[] = ['hottest', 'reading', 'weighed', 'leastIn', 'mostIn', 'tooMuch', 'ingredient', 'meat', ...OF_THE_CLOCK];

/** The same findings and figures, of the same probe or piece; any change is another miss. */
export function isSameMiss(known: Verdict | null, now: Verdict): boolean {
  if (known?.kind !== 'missed' || now.kind !== 'missed') return false;
  return known.probe === now.probe && canonicalJson(missedIn(known)) === canonicalJson(missedIn(now));
}

/** The same finding for the same reasons with the same figures; what is noted beside it may differ. */
export const isSameVerdict = (known: Verdict, now: Verdict): boolean =>
  known.kind === now.kind && canonicalJson(withoutClock(known)) === canonicalJson(withoutClock(now));

const withoutClock = (verdict: Verdict): [string, Figures][] =>
  [['', verdict.figures] as [string, Figures], ...reasonsOf(verdict)].map(([finding, figures]) => [
    finding,
    without(OF_THE_CLOCK, figures),
  ]);

const missedIn = (verdict: Verdict): [string, Figures][] =>
  reasonsOf(verdict).map(([finding, figures]) => [finding, without(BESIDE, figures)]);

function reasonsOf(verdict: Verdict): [string, Figures][] {
  const parts = (verdict.parts ?? []).filter(({ kind }) => verdict.kind === 'missed' && kind === 'missed');
  const own = parts.length > 0 ? parts : [verdict];
  return [...own, ...(verdict.also ?? [])].map(({ finding, figures }) => [finding, figures]);
}

const without = (names: readonly string[], figures: Figures): Figures =>
  Object.fromEntries(Object.entries(figures).filter(([name]) => !names.includes(name)));
