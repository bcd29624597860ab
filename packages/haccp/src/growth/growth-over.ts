import { growthRate } from './growth-rate';
import type { GrowthSet } from './growth-set';

/** Five-point Gauss-Legendre on −1 to 1. */
const NODES: readonly (readonly [node: number, weight: number])[] = [
  [0, 128 / 225],
  ...([-1, 1] as const).flatMap((side) => {
    const node = Math.sqrt(5 + side * 2 * Math.sqrt(10 / 7)) / 3;
    const weight = (322 - side * 13 * Math.sqrt(70)) / 900;
    return [
      [node, weight],
      [-node, weight],
    ] as const;
  }),
];

/** °C. On pieces up to this the quadrature is good to 1e-11 log; on whole segments only to 1e-4. */
const LONGEST_PIECE = 5;

/**
 * log10 without lag on a straight line from `a` to `b` °C, cut at Tmin and Tmax so that no piece holds a kink. The
 * closed form subtracts nearly equal numbers on a nearly level line; this does not.
 */
export function growthOver(set: GrowthSet, a: number, b: number, hours: number): number {
  if (a === b) return hours * growthRate(set, a);
  const low = Math.max(Math.min(a, b), set.minCelsius);
  const high = Math.min(Math.max(a, b), set.maxCelsius);
  if (!(low < high)) return 0;

  const pieces = Math.ceil((high - low) / LONGEST_PIECE);
  const half = (high - low) / pieces / 2;
  let sum = 0;
  for (let piece = 0; piece < pieces; piece += 1) {
    const middle = low + half * (2 * piece + 1);
    for (const [node, weight] of NODES) sum += weight * growthRate(set, middle + half * node);
  }
  return (hours * half * sum) / Math.abs(b - a);
}

/**
 * Baranyi and Roberts 1994 without an upper limit of numbers: G = lg((1 + q0 × 10^R) ÷ (1 + q0)), written so that it
 * cannot overflow. A lag restarted at each segment, or taken off once, is wrong while the temperature changes.
 */
export const withLag = ({ q0 }: GrowthSet, noLag: number): number => Math.max(0, noLag + Math.log10((q0 + 10 ** -noLag) / (1 + q0)));
