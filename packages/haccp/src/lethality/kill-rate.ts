import { DEGREE } from './celsius';
import type { LethalitySet } from './lethality-set';

const L10 = Math.LN10;
/** Here sinh(x)/x is 1 + x²/6 to the last bit, while its own formula cancels. */
const SMALL = 1e-4;

/** log10 per millisecond is e^(perStep × T + offset), T on the common scale. */
export type KillLaw = { perStep: number; offset: number };

export function killLaw({ minutesPerLog, referenceCelsius, zCelsius }: LethalitySet): KillLaw {
  const perStep = L10 / (zCelsius * DEGREE);
  return { perStep, offset: -Math.log(minutesPerLog * 60_000) - perStep * referenceCelsius * DEGREE };
}

/**
 * log10 reduction over a straight piece: dt × rate(middle) × sinh(x)/x, x = ½ ln(rate b ÷ rate a). Exact at any length,
 * stable for a level piece. A trapezoid over the rates overstates it (by a third over 5 °C), the rate at the mean
 * temperature understates it. @param a on the common scale, like `b` @param span milliseconds
 */
export function killOver({ perStep, offset }: KillLaw, a: number, b: number, span: number): number {
  const x = (perStep * (b - a)) / 2;
  const bulge = Math.abs(x) < SMALL ? 1 + (x * x) / 6 : Math.sinh(x) / x;
  return span * Math.exp((perStep * (a + b)) / 2 + offset) * bulge;
}

/** A piece that passes the floor is split there. */
export function killAbove(law: KillLaw, floor: number, a: number, b: number, span: number): number {
  if (a < floor && b < floor) return 0;
  if (a >= floor && b >= floor) return killOver(law, a, b, span);
  const hot = Math.max(a, b);
  const share = (hot - floor) / Math.abs(b - a);
  return killOver(law, floor, hot, span * share);
}
