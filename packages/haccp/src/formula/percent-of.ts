import { divide, type Rounding } from '../quantity/divide';
import type { Ratio } from './curing-species';
import { asGiven } from '../quantity/quantities';
import { faultOf, type Fault, type OrFault } from './fault';
import { percentParts } from './formula';

const WHOLE = 1_000_000n; // 100 % in ten-thousandths of a percent

/** Femtograms: 0.25 % of 10 kg is 25 g. */
export function weightOf(percent: number, base: bigint, rounding: Rounding = 'nearest'): bigint | Fault {
  const parts = percentParts(percent);
  if (parts === undefined) return faultOf('percent-of-weight-unusable', { percent: asGiven(percent, '%') });
  if (base <= 0n) return faultOf('no-weight-to-take-from');
  return divide(base * parts, WHOLE, rounding);
}

/** Exact: 25 g in 10 kg is 0.25 %. */
export function percentOf(weight: bigint, base: bigint): OrFault<Ratio> {
  if (base <= 0n) return faultOf('no-weight-to-take-from');
  if (weight < 0n) return faultOf('weight-below-nothing');
  return { numerator: weight * 100n, denominator: base };
}

/** Four decimals, rounded once. */
export function formulaPercentOf(weight: bigint, base: bigint): number | Fault {
  const exact = percentOf(weight, base);
  if ('fault' in exact) return exact;
  return Number(divide(exact.numerator * 10_000n, exact.denominator, 'nearest')) / 10_000;
}
