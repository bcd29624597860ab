import { timeToKill, type LethalitySoFar } from './lethality-so-far';
import { lethalityFound } from '../../lethality/lethality-found';
import { amountOf, degreesOf, leftOf, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { Instant } from '../../thermal/instant';
import type { CurveContext } from '../../limits/curve-context';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Coded, Figures, Found, Remark, Verdict, VerdictKind } from '../../limits/verdict';

/** Tolerance for the sum of many floats. */
const AS_GOOD_AS = 1e-9;
const NOTES: readonly Coded[] = [{ code: 'estimate-of-other-products' }, { code: 'lethality-support' }];
type Decided = Pick<Verdict, 'kind' | 'spare' | 'running'> & Found;

/**
 * Met when the sure kill reaches the target: the colder end of each step, zero over a gap. The straight-line kill is
 * shown and never meets it.
 */
export function judgeLethalitySoFar(cook: LethalitySoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit, last, hottest } = cook;
  if (!last || !hottest) return nothingUsableIn(curveNotes);
  const fault = limitFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [...curveNotes] };
  const straight: Coded = {
    code: 'lethality-straight',
    figures: { kill: lethalityFound({ atLeast: cook.byStraightLines, set: limit.set }) },
  };
  const thin = cook.byStraightLines - cook.sure >= 0.5 ? [straight] : [];
  return { ...decide(cook, context), notes: [...curveNotes, ...thin, ...NOTES] };
}

function decide(cook: LethalitySoFar, context: CurveContext): Decided {
  const { limit, sure, byStraightLines } = cook;
  const wanted = limit.log10 / 100;
  const shared = { kill: lethalityFound({ atLeast: sure, set: limit.set }), target: amountOf(limit.log10, 'log10', 2) };
  const spare = Math.floor((sure - wanted) * 100 - AS_GOOD_AS);
  if (sure - wanted > AS_GOOD_AS) return { kind: 'met', finding: 'lethality-reached', measure: 'lethality', figures: shared, spare };
  const short = halfLogs(Math.ceil((wanted - sure) * 2));
  const of = (kind: VerdictKind, finding: string, more: Figures): Decided => ({
    ...{ kind, finding: `lethality-${finding}`, measure: 'lethality', spare: Math.min(spare, -1) },
    figures: { ...shared, short, ...more },
  });
  if (byStraightLines - wanted > AS_GOOD_AS) return of('undetermined', ...thin(cook));
  // a judged cook has a reading, and so a hottest
  if (context.ended) return of('missed', 'ended', { hottest: degreesOf((cook.hottest as Instant).colder.temperature) });
  const left = timeToKill(cook, wanted - sure);
  const until = left === undefined ? undefined : (cook.last as Instant).at + left;
  const running = { code: 'lethality', figures: { target: shared.target }, until };
  return { ...of('undetermined', 'running', whatIsLeft(cook, left, context)), running };
}

const thin = ({ gap, limit }: LethalitySoFar): [string, Figures] =>
  gap > 0 ? ['gap', { gap: timeOf(gap), tolerated: timeOf(limit.longestGapSeconds * 1000) }] : ['not-sure', {}];

/** Age of the last reading, or the time left to the minute. */
function whatIsLeft({ last, longestGap }: LethalitySoFar, left: number | undefined, { now }: CurveContext): Figures {
  const { at } = last as Instant;
  const age = (now ?? at) - at;
  if (age > longestGap) return { age: timeOf(age) };
  return leftOf(left);
}

const halfLogs = (halves: number): Quantity => amountOf(halves * 5, 'log10', 1);
