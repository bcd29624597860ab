import type { FreezingLimit } from './freezing-limit';
import { coded } from '../../limits/coded';
import { timeOf } from '../../quantity/quantities';
import { byProbe, prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';
import { errorOf, type CurveContext } from '../../limits/curve-context';
import type { Series } from '../../limits/series';
import { RANK } from '../../limits/worst-verdict';
import type { Verdict } from '../../limits/verdict';
import { freezingJudge } from './freezing-judge';
import { isBefore } from './judge-freezing';

export function explainFreezing(limit: FreezingLimit, series: Series, context: CurveContext): WorkedOut {
  const own = worstProbe(limit, series, context);
  const { warmer } = prepareCurve(own.filter((one) => !isBefore(one, { read: limit.read, startAt: context.startAt })));
  const [first, last] = [warmer[0], warmer.at(-1)];
  if (!first || !last) return explainByVerdict;
  return {
    steps: [
      {
        what: coded('frozen-without-a-break'),
        rule: coded('frozen-without-a-break.rule', { gap: timeOf(limit.longestGapSeconds * 1000) }),
        putIn: coded('readings-from-to', { count: warmer.length, from: { at: first.at }, to: { at: last.at } }),
        gives: { verdict: 'measured' },
      },
      { what: coded('against-rows'), rule: { limit }, putIn: { verdict: 'measured' }, gives: { verdict: 'because' } },
    ],
    restsOn: [...resting(first, 'the-first'), ...(last === first ? [] : resting(last, 'the-last'))],
    assumptions: [coded('nothing-between-rows')],
  };
}

/** Every probe has to be frozen: told is the one that holds the others back. */
function worstProbe(limit: FreezingLimit, series: Series, context: CurveContext): readonly CurveReading[] {
  if (errorOf(context) === undefined) return [];
  return [...byProbe(series.temperatures).values()]
    .map((own) => ({ own, of: freezingJudge.judge({ ...series, temperatures: own }, limit, context) }))
    .reduce((worst, one) => (isWorse(one.of, worst.of) ? one : worst)).own;
}

const isWorse = (one: Verdict, other: Verdict): boolean => (RANK[one.kind] - RANK[other.kind] || spareOf(one) - spareOf(other)) < 0;

const spareOf = ({ spare = -Infinity }: Verdict): number => spare;
