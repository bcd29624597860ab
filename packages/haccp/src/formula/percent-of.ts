import { divide, type Rounding } from '../quantity/divide';
import type { Ratio } from './curing-species';
import type { Fault, OrFault } from './fault';
import { percentParts } from './formula';

const WHOLE = 1_000_000n; // 100 % in ten-thousandths of a percent

/** Femtograms: 0.25 % of 10 kg is 25 g. */
export function weightOf(percent: number, base: bigint, rounding: Rounding = 'nearest'): bigint | Fault {
  const parts = percentParts(percent);
  if (parts === undefined) return { fault: `${percent} % cannot be used: above 0, at most 1000, with four decimals.` };
  if (base <= 0n) return { fault: 'There is no weight to take a percentage of.' };
  return divide(base * parts, WHOLE, rounding);
}

/** Exact: 25 g in 10 kg is 0.25 %. */
export function percentOf(weight: bigint, base: bigint): OrFault<Ratio> {
  if (base <= 0n) return { fault: 'There is no weight to take a percentage of.' };
  if (weight < 0n) return { fault: 'A weight below nothing has no percentage.' };
  return { numerator: weight * 100n, denominator: base };
}

/** Four decimals, rounded once. */
export function formulaPercentOf(weight: bigint, base: bigint): number | Fault {
  const exact = percentOf(weight, base);
  if ('fault' in exact) return exact;
  return Number(divide(exact.numerator * 10_000n, exact.denominator, 'nearest')) / 10_000;
}
