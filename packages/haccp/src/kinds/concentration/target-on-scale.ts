import type { CodedAs } from '../../limits/coded';
import { divide } from '../../quantity/divide';
import { roundedMass } from '../../quantity/weigh';
import type { Dose } from './dose-for';

/** Femtograms; without a target no figure of the scale is within the dose. */
export type TargetOnScale = { target?: bigint; because?: CodedAs<TargetCode> };
type TargetCode = 'nearest-on-scale' | 'nothing-on-scale' | 'scale-step-unusable';

/** Nearest to the aim within the dose, rounded inward: the figure shown never misses. */
export function targetOnScale(aimed: bigint, { least = 0n, most }: Dose, step: bigint): TargetOnScale {
  if (step <= 0n) return { because: { code: 'scale-step-unusable' } };
  const from = divide(least, step, 'up') * step;
  const to = most === undefined ? undefined : divide(most, step, 'down') * step;
  if (to !== undefined && (to < from || to <= 0n)) {
    return { because: { code: 'nothing-on-scale', figures: { step: roundedMass(step, 'g') } } };
  }
  const nearest = divide(aimed, step, 'nearest') * step;
  const target = clamp(nearest, from, to);
  if (aimed >= least && (most === undefined || aimed <= most)) return { target };
  const figures = { aimed: roundedMass(aimed, 'g'), nearest: roundedMass(target, 'g') };
  return { target, because: { code: 'nearest-on-scale', figures } };
}

function clamp(mass: bigint, from: bigint, to: bigint | undefined): bigint {
  if (mass < from) return from;
  return to !== undefined && mass > to ? to : mass;
}
