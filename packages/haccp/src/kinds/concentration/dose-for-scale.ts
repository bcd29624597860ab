import { decimalText } from '../../quantity/decimal';
import { divide } from '../../quantity/divide';
import { coded } from '../../limits/coded';
import type { Coded } from '../../limits/verdict';
import { roundedMass } from '../../quantity/weigh';
import type { Dose } from './dose-for';
import { asGiven } from '../../quantity/quantities';

/** Femtograms; `error` is beside the rounding to the step. */
export type Scale = { step: bigint; error?: bigint };

export type DoseOnScale = {
  isFineEnough: boolean;
  /** Figures for which the true weight is surely within the dose; absent without any. */
  shows?: { from: bigint; to: bigint };
  /** Femtograms either side: half a step and the scale's own error. */
  doubt: bigint;
  because: Coded;
};

/** Percent of the amount. Common practice, no source. */
const USUAL_PERCENT = 5;
const HUNDRED = 100n;

/**
 * Fine enough when some figure is surely within, with a doubt of at most `withinPercent` of the most (else of the
 * least). A scale in steps of 1 g weighs 2.5 g to 20 %: too coarse.
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
    within: asGiven(withinPercent, '%'),
  } as const;
  return { isFineEnough, shows: { from, to }, doubt, because: coded(isFineEnough ? 'fine-enough' : 'too-coarse', figures) };
}
