export type Rounding = 'nearest' | 'up' | 'down';

/** Rounded once: half away from zero, up (to the larger number) or down (to the smaller). */
export function divide(numerator: bigint, denominator: bigint, rounding: Rounding): bigint {
  if (denominator < 0n) return divide(-numerator, -denominator, rounding);
  const cut = numerator / denominator; // towards zero
  const rest = numerator - cut * denominator;
  if (rest === 0n) return cut;
  if (rounding === 'down') return rest < 0n ? cut - 1n : cut;
  if (rounding === 'up') return rest < 0n ? cut : cut + 1n;
  if (rest < 0n) return -2n * rest >= denominator ? cut - 1n : cut;
  return 2n * rest >= denominator ? cut + 1n : cut;
}
