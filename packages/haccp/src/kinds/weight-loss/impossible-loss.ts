import type { Found } from '../../limits/verdict';
import { divide } from '../../quantity/divide';
import { amountOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { Drying, Weighing } from './weighings';

/**
 * Percent. Lean meat is three quarters water, and some stays in the driest: jerky at a moisture-protein ratio of 0.4
 * has lost two thirds. Worked out, no source.
 */
const MOST_OF_ALL = 70n;
/**
 * Percent from one weighing to the next. Kilograms read as pounds look like a loss of at least 54.6 %; a drying piece
 * is weighed before it loses half. Common practice, no source.
 */
const MOST_AT_ONCE = 50n;

export function impossibleLoss({ start, later }: Drying): Found | undefined {
  const steps = [start, ...later];
  const jump = later.findIndex((now, index) => isMore(MOST_AT_ONCE, steps[index] as Weighing, now));
  if (jump >= 0) {
    return { finding: 'loss-impossible-at-once', figures: { step: lostOf(steps[jump] as Weighing, later[jump] as Weighing) } };
  }
  const most = later.find((now) => isMore(MOST_OF_ALL, start, now));
  return most && { finding: 'loss-impossible', figures: { step: lostOf(start, most) } };
}

const isMore = (percent: bigint, before: Weighing, now: Weighing): boolean => (before.mass - now.mass) * 100n > percent * before.mass;

const lostOf = (before: Weighing, now: Weighing): Quantity =>
  amountOf(divide((before.mass - now.mass) * 1000n, before.mass, 'down'), '%', 1);
