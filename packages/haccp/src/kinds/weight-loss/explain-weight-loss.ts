import { inOrder } from './weighings';
import type { WeightReading } from '../../limits/series';
import type { WeightLossLimit } from './weight-loss-limit';
import type { Told } from '../../limits/told';
import { sayPercent } from '../../quantity/percent';
import { sayMass } from '../../quantity/weigh';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';

/** What the marked piece weighed at the start and weighs now. */
export function explainWeightLoss(limit: WeightLossLimit, told: Told, own: readonly WeightReading[]): WorkedOut {
  const drying = inOrder(own);
  const now = drying?.later.at(-1);
  if (!drying || !now) return explainByVerdict(told);
  const { start } = drying;
  const [before, after] = [sayMass(start.mass, 'g'), sayMass(now.mass, 'g')];
  const resting = (at: number, mass: bigint, role: string) => {
    const { id, probe } = own.find((one) => one.at === at && one.mass === mass) as WeightReading;
    return { id, at, probe: probe || undefined, said: sayMass(mass, 'g'), role };
  };
  return {
    steps: [
      {
        what: 'Weight lost',
        rule: '(start − now) ÷ start',
        putIn: `(${before} − ${after}) ÷ ${before}`,
        gives: told.measured,
      },
      {
        what: 'Against the loss asked for',
        rule: `not below ${sayPercent(limit.percent)}`,
        putIn: told.measured,
        gives: [told.margin, told.because].filter(Boolean).join('. '),
      },
    ],
    restsOn: [resting(start.at, start.mass, 'at the start'), resting(now.at, now.mass, 'now')],
    assumptions: ['Of one instant with two weights the one is taken by which less was lost.'],
  };
}
