import type { Dose } from '../limits/dose-for';
import { divide } from '../quantity/divide';
import type { EnteredMass } from '../quantity/mass';
import { massOf, sayMass } from '../quantity/weigh';
import type { Result } from './working';

/**
 * What a scale may show so that the weight is surely within the dose: it rounds to its nearest step, so half a step may
 * lie either side of what it shows. The error of the scale itself comes on top.
 */
export function surelyWithin({ least, most }: Dose, scale: EnteredMass): Result {
  const step = massOf(scale);
  const half = divide(step, 2n, 'up');
  const what = 'On this scale';
  const from = divide((least ?? 0n) + half, step, 'up') * step;
  const to = most === undefined ? undefined : divide(most - half, step, 'down') * step;
  const say = (mass: bigint) => sayMass(mass, scale.unit);
  if (to === undefined) return { what, said: `what shows ${say(from)} or more is surely enough` };
  if (to < from || to <= 0n) {
    return { what, said: `too coarse: in steps of ${say(step)} nothing it shows is surely within. Take a finer scale.` };
  }
  const range = from === to ? say(to) : least === undefined ? `up to ${say(to)}` : `${say(from)} to ${say(to)}`;
  return { what, said: `what shows ${range} is surely within` };
}
