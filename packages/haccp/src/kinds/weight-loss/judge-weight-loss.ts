import type { WeightLossLimit } from './weight-loss-limit';
import type { Verdict } from '../../limits/verdict';
import { decimalText } from '../../quantity/decimal';
import { divide, type Rounding } from '../../quantity/divide';
import { partsPerMillion, sayPercent } from '../../quantity/percent';
import { sayMass } from '../../quantity/weigh';
import { isSetAside, noteOf } from '../../thermal/curve';
import { impossibleLoss } from './impossible-loss';
import { inOrder, type Drying, type Weighing } from './weighings';

type Said = Pick<Verdict, 'kind' | 'measured' | 'because' | 'next' | 'margin' | 'spare'>;

/**
 * (start − last) ÷ start against the least loss, as exact fractions. A lot still drying has missed nothing.
 * @param error femtograms either weighing may be wrong by: the start is then as light, and now as heavy, as may be
 */
export function judgeWeightLoss(weighings: readonly Weighing[], limit: Omit<WeightLossLimit, 'kind'>, ended: boolean, error = 0n): Verdict {
  const drying = inOrder(weighings);
  const parts = partsPerMillion(limit.percent);
  const leftOut = drying?.leftOut ?? 0;
  const setAside = weighings.filter(isSetAside).length;
  const notes = [
    ...(leftOut > 0 ? [`${leftOut} of the weighings left out: they cannot be true.`] : []),
    ...(error > 0n ? [`Each weighing is taken ${sayMass(error, 'g')} to the worse: what the scale may be wrong by.`] : []),
    ...noteOf('set-aside', setAside),
  ];
  const shared = { source: limit.source, notes };
  if (!parts) {
    const because = 'The loss asked for is no percentage above 0 with at most four decimals.';
    return { ...shared, limit: 'no usable limit', ...doubt(because, 'Correct the limit in the plan.') };
  }
  const said = sayWeightLoss(limit);
  return { ...shared, limit: said, ...decide(drying, BigInt(parts), ended, sayPercent(limit.percent), error) };
}

/** "≥ 35 % of the start weight lost" */
export const sayWeightLoss = ({ percent }: Pick<WeightLossLimit, 'percent'>): string => `≥ ${sayPercent(percent)} of the start weight lost`;

function decide(drying: Drying | undefined, parts: bigint, ended: boolean, asked: string, error: bigint): Said {
  const now = drying?.later[drying.later.length - 1];
  if (!drying) return doubt('Two weighings are needed: at the start and now.', 'Weigh the marked pieces.');
  if (!now) return doubt('Only the start is weighed so far.', 'Weigh the same pieces again as they dry.');
  const mass = drying.start.mass - error;
  if (mass <= 0n) return doubt('It weighs no more than the scale may be wrong by.', 'Weigh on a finer scale.');
  const lost = atLeastNone(mass - now.mass - error);
  if (now.mass > drying.start.mass) return doubt('It weighs more than at the start.', 'Check that the same pieces were weighed.');

  const spare = lost * 1_000_000n - parts * mass;
  const percent = (millionths: bigint, rounding: Rounding) => `${decimalText(divide(millionths, mass * 1000n, rounding), 1)} %`;
  const measured = `${percent(lost * 1_000_000n, 'down')} lost`;
  const impossible = spare >= 0n ? impossibleLoss(drying) : undefined;
  if (impossible) return { ...doubt(impossible, 'Correct the weighing that is wrong, with its unit.'), measured };
  if (spare >= 0n) {
    const margin = `${percent(spare, 'down')} to spare`;
    return { kind: 'met', measured, margin, spare: Number(spare / mass), because: `${measured}; ${asked} is asked for.` };
  }
  const missing = percent(-spare, 'up');
  const short = { measured, margin: `${missing} short`, spare: Number(spare / mass) - 1 };
  if (!ended) {
    const because = `${measured} so far; ${asked} is asked for.`;
    const next = `Go on drying and weigh again: ${missing} is still to be lost.`;
    return { ...short, kind: 'undetermined', because, next };
  }
  const because = `It was ended with ${measured}; ${asked} is asked for.`;
  const next = 'Hold the lot: dry it on, or follow the corrective action of the plan.';
  return { ...short, kind: 'missed', because, next };
}

const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

const doubt = (because: string, next: string): Said => ({
  kind: 'undetermined',
  measured: 'nothing usable',
  because,
  next,
});
