import type { FreezingLimit } from './freezing-limit';
import { coded } from '../../limits/coded';
import { timeOf } from '../../quantity/quantities';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';
import { resting } from '../../explain/readings-at';

export function explainFreezing(limit: FreezingLimit, own: readonly CurveReading[]): WorkedOut {
  const { warmer } = prepareCurve(own);
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
