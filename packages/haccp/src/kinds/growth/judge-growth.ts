import { GROWTH_CLAIM } from '../../growth/growth';
import { growthInClasses } from '../../growth/growth-found';
import { highestByStraightLines, highestOf, isGrowing, type GrowthFigure, type GrowthSoFar } from './growth-so-far';
import { asGiven, amountOf, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { CurveContext } from '../../limits/curve-context';
import { wordFor } from '../../limits/coded';
import { limitFault } from '../../limits/limit-fault';
import { nothingUsableIn } from '../../limits/nothing-usable';
import { unusableLimit } from '../../limits/unusable-limit';
import type { Coded, Figures, Found, Phrase, Remark, Verdict } from '../../limits/verdict';

const NOTES: readonly Coded[] = [{ code: 'growth-screening' }, { code: GROWTH_CLAIM }];
type Decided = Pick<Verdict, 'kind' | 'running'> & Omit<Found, 'measure'>;

/**
 * Met when the worst case, the fastest rate of each step, is within the bound. Missed when straight lines of any
 * set pass it; anything between, a gap, or unseen growth is doubt.
 */
export function judgeGrowthSoFar(growth: GrowthSoFar, curveNotes: readonly Remark[], context: CurveContext): Verdict {
  const { limit, last } = growth;
  if (!last) return nothingUsableIn(curveNotes);
  const fault = limitFault(limit);
  if (fault) return { ...unusableLimit(fault), notes: [...curveNotes] };
  const straight = highestByStraightLines(growth);
  const highest = straight.byStraightLines * 100 > limit.log10 ? straight : highestOf(growth);
  const spare = Math.floor(limit.log10 - highest.atMost * 100);
  const { figures, ...decided } = decide(growth, highest, context);
  return {
    ...decided,
    ...{ measure: 'growth', spare, notes: [...curveNotes, ...NOTES] },
    figures: { ...figures, grown: grown(highest, growth) },
  };
}

function decide(growth: GrowthSoFar, { set, atMost, byStraightLines }: GrowthFigure, context: CurveContext): Decided {
  const most = growth.limit.log10 / 100;
  const bound = amountOf(growth.limit.log10, 'log10', 2);
  if (byStraightLines > most)
    return { kind: 'missed', finding: 'growth-too-much', figures: { bound, set: wordFor('growth-set', set.species) } };
  if (growth.readings < 2) return doubt('growth-one-reading');
  if (growth.startUnseen) return doubt('growth-start-unseen');
  if (growth.gap > 0) {
    return doubt('growth-gap', { gap: timeOf(growth.gap), tolerated: timeOf(growth.limit.longestGapSeconds * 1000) });
  }
  if (isGrowing(growth)) return context.ended ? endedWarm(growth) : goesOn(bound);
  if (atMost <= most) return { kind: 'met', finding: 'growth-within', figures: { bound, set: wordFor('growth-set', set.species) } };
  return doubt('growth-not-sure', { bound });
}

function endedWarm({ sums }: GrowthSoFar): Decided {
  const coldest: Quantity = asGiven(Math.min(...sums.map(({ set }) => set.minCelsius)), '°C');
  return doubt('growth-ended-warm', { coldest });
}

const goesOn = (bound: Quantity): Decided => ({ ...doubt('growth-going-on'), running: { code: 'growth', figures: { bound } } });

const doubt = (finding: string, figures: Figures = {}): Decided => ({ kind: 'undetermined', finding, figures });

const grown = ({ set, atMost, byStraightLines }: GrowthFigure, growth: GrowthSoFar): Phrase =>
  growthInClasses({ set, straight: byStraightLines, most: atMost, isAtLeast: growth.startUnseen || isGrowing(growth) });
