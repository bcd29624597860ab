import { DEGREE } from './celsius';
import type { LethalitySet } from './lethality-set';

const L10 = Math.LN10;
/** Below this sinh(x)/x is 1 + x²/6 to the last bit, and its own formula cancels. */
const SMALL = 1e-4;

/** The set's law on the common scale of temperatures: log10 per millisecond is e^(perStep × T + offset). */
export type KillLaw = { perStep: number; offset: number };

export function killLaw({ minutesPerLog, referenceCelsius, zCelsius }: LethalitySet): KillLaw {
  const perStep = L10 / (zCelsius * DEGREE);
  return { perStep, offset: -Math.log(minutesPerLog * 60_000) - perStep * referenceCelsius * DEGREE };
}

/**
 * log10 reduction over a straight piece from temperature a to b: dt × rate(middle) × sinh(x)/x, x = ½ ln(rate b ÷ rate
 * a). Exact at any length of the piece, and stable for a piece that is level.
 * A trapezoid over the rates overstates it (by a third over 5 °C), the rate at the mean temperature understates it.
 * @param a on the common scale, as `onCommonScale` gives it
 * @param span milliseconds
 */
export function killOver({ perStep, offset }: KillLaw, a: number, b: number, span: number): number {
  const x = (perStep * (b - a)) / 2;
  const bulge = Math.abs(x) < SMALL ? 1 + (x * x) / 6 : Math.sinh(x) / x;
  return span * Math.exp((perStep * (a + b)) / 2 + offset) * bulge;
}

/** As `killOver`, counting only what lies at or above a floor: a piece that passes it is split there. */
export function killAbove(law: KillLaw, floor: number, a: number, b: number, span: number): number {
  if (a < floor && b < floor) return 0;
  if (a >= floor && b >= floor) return killOver(law, a, b, span);
  const hot = Math.max(a, b);
  const share = (hot - floor) / Math.abs(b - a);
  return killOver(law, floor, hot, span * share);
}
