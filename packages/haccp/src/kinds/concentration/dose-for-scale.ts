import { decimalText } from '../../quantity/decimal';
import { divide } from '../../quantity/divide';
import { sayMass } from '../../quantity/weigh';
import type { Dose } from './dose-for';

/** Femtograms: the step a scale shows, and what it may be off by beside the rounding to that step. */
export type Scale = { step: bigint; error?: bigint };

export type DoseOnScale = {
  isFineEnough: boolean;
  /** What the scale may show so that the true weight is surely within the dose; absent when nothing it shows is. */
  shows?: { from: bigint; to: bigint };
  /** Femtograms the true weight may lie either side of what is shown: half a step and the scale's own error. */
  doubt: bigint;
  because: string;
};

/** A weighing good to a twentieth of its amount. Common practice, no source. */
const USUAL_PERCENT = 5;
const HUNDRED = 100n;

/**
 * Whether a scale can weigh a dose: some figure it shows must be surely within, and its doubt at most `withinPercent`
 * of the most allowed (of the least, where there is no most). A scale in steps of 1 g weighs 2.5 g to 20 %, which is
 * too coarse. Never fine enough when the scale, the dose or the percentage cannot be used.
 */
export function doseOnScale(dose: Dose, { step, error = 0n }: Scale, withinPercent = USUAL_PERCENT): DoseOnScale {
  const doubt = divide(step, 2n, 'up') + error;
  const refuse = (because: string): DoseOnScale => ({ isFineEnough: false, doubt, because });
  const amount = dose.most ?? dose.least;
  const isUsable = step > 0n && error >= 0n && Number.isInteger(withinPercent) && withinPercent > 0;
  if (!isUsable) return refuse('The step, the error or the tolerance of the scale cannot be used.');
  if (amount === undefined || amount <= 0n) return refuse('There is no dose to weigh.');

  const from = divide((dose.least ?? 0n) + doubt, step, 'up') * step;
  const to = divide((dose.most ?? from + doubt) - doubt, step, 'down') * step;
  const say = (mass: bigint) => sayMass(mass, 'g');
  if (to < from || to <= 0n) {
    return refuse(`In steps of ${say(step)} nothing the scale shows is surely within the dose. Take a finer scale.`);
  }
  const shows = { from, to };
  const isFineEnough = doubt * HUNDRED <= amount * BigInt(withinPercent);
  const said = `${say(doubt)} of doubt on ${say(amount)} is ${sayShare(doubt, amount)} %`;
  return isFineEnough
    ? { isFineEnough, shows, doubt, because: `${said}, within ${withinPercent} %.` }
    : { isFineEnough, shows, doubt, because: `${said}, more than ${withinPercent} %. Take a finer scale.` };
}

const sayShare = (doubt: bigint, amount: bigint): string => decimalText(divide(doubt * 1000n * HUNDRED, amount, 'up'), 3);
