import { decimalText } from '../../quantity/decimal';
import { divide } from '../../quantity/divide';
import { coded } from '../../limits/coded';
import type { Coded } from '../../limits/verdict';
import { roundedMass } from '../../quantity/weigh';
import type { Dose } from './dose-for';

/** Femtograms: the step a scale shows, and what it may be off by beside the rounding to that step. */
export type Scale = { step: bigint; error?: bigint };

export type DoseOnScale = {
  isFineEnough: boolean;
  /** What the scale may show so that the true weight is surely within the dose; absent when nothing it shows is. */
  shows?: { from: bigint; to: bigint };
  /** Femtograms the true weight may lie either side of what is shown: half a step and the scale's own error. */
  doubt: bigint;
  because: Coded;
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
  const refuse = (because: Coded): DoseOnScale => ({ isFineEnough: false, doubt, because });
  const amount = dose.most ?? dose.least;
  const isUsable = step > 0n && error >= 0n && Number.isInteger(withinPercent) && withinPercent > 0;
  if (!isUsable) return refuse(coded('scale-unusable'));
  if (amount === undefined || amount <= 0n) return refuse(coded('no-dose'));

  const from = divide((dose.least ?? 0n) + doubt, step, 'up') * step;
  const to = divide((dose.most ?? from + doubt) - doubt, step, 'down') * step;
  const amountOf = (mass: bigint) => roundedMass(mass, 'g');
  if (to < from || to <= 0n) return refuse(coded('nothing-surely-within', { step: amountOf(step) }));
  const isFineEnough = doubt * HUNDRED <= amount * BigInt(withinPercent);
  const figures = {
    doubt: amountOf(doubt),
    amount: amountOf(amount),
    share: { value: decimalText(divide(doubt * 1000n * HUNDRED, amount, 'up'), 3), unit: '%' },
    within: { value: String(withinPercent), unit: '%' },
  } as const;
  return { isFineEnough, shows: { from, to }, doubt, because: coded(isFineEnough ? 'fine-enough' : 'too-coarse', figures) };
}
