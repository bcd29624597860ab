import { inOrder } from './weighings';
import type { WeightReading } from '../../limits/series';
import type { WeightLossLimit } from './weight-loss-limit';
import { grams, percent } from '../../calculators/figures';
import { coded } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { RestingOn, WorkedOut } from '../../explain/explanation';

export function explainWeightLoss(limit: WeightLossLimit, own: readonly WeightReading[]): WorkedOut {
  const drying = inOrder(own);
  const now = drying?.later.at(-1);
  if (!drying || !now) return explainByVerdict;
  const { start } = drying;
  const [before, after] = [grams(start.mass), grams(now.mass)];
  const resting = (at: number, mass: bigint, role: string): RestingOn => {
    const { id, probe } = own.find((one) => one.at === at && one.mass === mass) as WeightReading;
    return { id, at, probe: probe || undefined, is: grams(mass), role: coded(role) };
  };
  return {
    steps: [
      {
        what: coded('weight-lost'),
        rule: coded('weight-lost.rule'),
        putIn: sum`(${before} − ${after}) ÷ ${before}`,
        gives: { verdict: 'measured' },
      },
      {
        what: coded('against-loss-asked'),
        rule: coded('not-below', { percent: percent(limit.percent) }),
        putIn: { verdict: 'measured' },
        gives: { verdict: 'margin and because' },
      },
    ],
    restsOn: [resting(start.at, start.mass, 'weighed-at-start'), resting(now.at, now.mass, 'weighed-now')],
    assumptions: [coded('less-loss-of-one-instant')],
  };
}
