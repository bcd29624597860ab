import { divide } from '../../quantity/divide';
import { formatMass } from '../../quantity/weigh';
import type { Dose } from './dose-for';

/** What to weigh, in femtograms, on a scale that shows steps; without a target nothing it shows is within the dose. */
export type TargetOnScale = { target?: bigint; because?: string };

/**
 * The figure of the scale nearest to what is aimed at and within the dose: rounded inward, so that what is shown never
 * misses. Says so where the dose does not hold what is aimed at, or the steps are too coarse for the dose.
 */
export function targetOnScale(aimed: bigint, { least = 0n, most }: Dose, step: bigint): TargetOnScale {
  if (step <= 0n) return { because: 'The step of the scale cannot be used.' };
  const from = divide(least, step, 'up') * step;
  const to = most === undefined ? undefined : divide(most, step, 'down') * step;
  if (to !== undefined && (to < from || to <= 0n)) {
    return { because: `In steps of ${formatMass(step, 'g')} nothing the scale shows is surely within the limit. Take a finer scale.` };
  }
  const nearest = divide(aimed, step, 'nearest') * step;
  const target = clamp(nearest, from, to);
  if (aimed >= least && (most === undefined || aimed <= most)) return { target };
  const because =
    `The formula asks for ${formatMass(aimed, 'g')}, which is not surely within the limit on this scale: ` +
    `${formatMass(target, 'g')} is the nearest that is.`;
  return { target, because };
}

function clamp(mass: bigint, from: bigint, to: bigint | undefined): bigint {
  if (mass < from) return from;
  return to !== undefined && mass > to ? to : mass;
}
