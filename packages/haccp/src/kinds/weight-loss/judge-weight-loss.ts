import type { WeightLossLimit } from './weight-loss-limit';
import type { Coded, Found, Verdict } from '../../limits/verdict';
import { divide, type Rounding } from '../../quantity/divide';
import { partsPerMillion } from '../../quantity/percent';
import { amountOf } from '../../quantity/quantities';
import { roundedMass } from '../../quantity/weigh';
import { isSetAside, noteOf } from '../../thermal/curve';
import { impossibleLoss } from './impossible-loss';
import { inOrder, type Drying, type Weighing } from './weighings';

type Decided = Pick<Verdict, 'kind' | 'spare'> & Found;

/**
 * (start − last) ÷ start against the least loss, exact. A lot still drying has missed nothing. @param error femtograms
 * of either weighing: the worst is a light start and a heavy now
 */
export function judgeWeightLoss(weighings: readonly Weighing[], limit: Omit<WeightLossLimit, 'kind'>, ended: boolean, error = 0n): Verdict {
  const drying = inOrder(weighings);
  const parts = partsPerMillion(limit.percent);
  const leftOut = drying?.leftOut ?? 0;
  const setAside = weighings.filter(isSetAside).length;
  const notes: Coded[] = [
    ...(leftOut > 0 ? [{ code: 'weighings-left-out', figures: { count: leftOut } }] : []),
    ...(error > 0n ? [{ code: 'weighed-to-the-worse', figures: { error: roundedMass(error, 'g') } }] : []),
    ...noteOf('set-aside', setAside),
  ];
  if (!parts) return { kind: 'undetermined', finding: 'loss-asked-unusable', figures: {}, notes };
  return { ...decide(drying, BigInt(parts), ended, error), notes };
}

function decide(drying: Drying | undefined, parts: bigint, ended: boolean, error: bigint): Decided {
  const now = drying?.later[drying.later.length - 1];
  if (!drying) return doubt('loss-no-start');
  if (!now) return doubt('loss-only-start');
  const mass = drying.start.mass - error;
  if (mass <= 0n) return doubt('loss-within-error');
  const net = atLeastNone(mass - now.mass - error);
  if (now.mass > drying.start.mass) return doubt('loss-gained');

  const over = net * 1_000_000n - parts * mass;
  const percent = (millionths: bigint, rounding: Rounding) => amountOf(divide(millionths, mass * 1000n, rounding), '%', 1);
  const shared = { lost: percent(net * 1_000_000n, 'down'), asked: amountOf(parts, '%', 4) };
  const impossible = over >= 0n ? impossibleLoss(drying) : undefined;
  if (impossible) return { kind: 'undetermined', ...impossible, figures: { ...impossible.figures, ...shared } };
  if (over >= 0n) {
    const figures = { ...shared, spare: percent(over, 'down') };
    return { kind: 'met', finding: 'loss-enough', figures, spare: Number(over / mass) };
  }
  const figures = { ...shared, short: percent(-over, 'up') };
  const spare = Number(over / mass) - 1;
  if (!ended) return { kind: 'undetermined', finding: 'loss-so-far', figures, spare };
  return { kind: 'missed', finding: 'loss-too-little', figures, spare };
}

const atLeastNone = (mass: bigint): bigint => (mass > 0n ? mass : 0n);

const doubt = (finding: string): Decided => ({ kind: 'undetermined', finding, figures: {} });
