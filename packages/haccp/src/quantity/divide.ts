export type Rounding = 'nearest' | 'up' | 'down';

/** Exact integer division, rounded once: half away from zero, up (to the larger number) or down (to the smaller). */
export function divide(numerator: bigint, denominator: bigint, rounding: Rounding): bigint {
  const [n, d] = denominator < 0n ? [-numerator, -denominator] : [numerator, denominator];
  const down = n / d - (n % d < 0n ? 1n : 0n);
  const rest = n - down * d;
  if (rest === 0n || rounding === 'down') return down;
  if (rounding === 'up') return down + 1n;
  const twice = 2n * rest;
  return twice > d || (twice === d && n > 0n) ? down + 1n : down;
}
