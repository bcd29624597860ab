import { onCommonScale } from '../quantity/convert-degrees';
import type { Instant } from './instant';
import { halfOf, isStirred, type Piece, type SolidPiece } from './piece';

/**
 * A piece whose surface is wholly and at once as hot or cold as its medium comes nearer to it by the factor e^(−λ α t ÷
 * L²) at most: the first mode of the series in Carslaw and Jaeger, Conduction of Heat in Solids, 1959 (λ the first
 * eigenvalue squared, L half the smallest dimension). Real cores are slower. Injected steam or brine, a piece cut apart
 * or a stirred liquid are not covered.
 */
const EIGENVALUE: Record<SolidPiece['shape'], number> = {
  slab: (Math.PI / 2) ** 2,
  cylinder: 2.404825557695773 ** 2,
  sphere: Math.PI ** 2,
};
/** In m²/s. Measured in meat above freezing: 1.2e-7 to 1.5e-7; rounded up, common practice, no source. */
const FASTEST = 1.6e-7;

/** λ α ÷ L² per millisecond; infinite where stirred; undefined without a usable dimension. */
export function rateOf(piece: Piece): number | undefined {
  if (isStirred(piece)) return Infinity;
  const half = halfOf(piece);
  return half && (EIGENVALUE[piece.shape] * FASTEST) / half ** 2 / 1000;
}

/** Least share of the way to its surroundings still before a core after a time (ms). */
export const leastLeft = (piece: Piece, milliseconds: number): number => Math.exp(-(rateOf(piece) as number) * milliseconds);

/** Hottest and coldest surface, and the error of a reading, on the common scale. */
export type Around = { hottest: number; coldest: number; error: number };

export type TooFast = 'rises faster than the piece can' | 'falls faster than the piece can';

/**
 * Least distances below the hottest and above the coldest. Time shrinks all by one factor, so the largest stands for
 * every earlier reading, not only the neighbour.
 */
export type CoreSpeed = {
  readonly rate: number;
  readonly around: Around;
  at: number;
  toHottest: number;
  toColdest: number;
  /** Loggers read at even steps: the factor is computed only when the step changes. */
  step: number;
  factor: number;
};

export const beginSpeed = (rate: number, around: Around): CoreSpeed => ({
  rate,
  around,
  at: 0,
  toHottest: -Infinity,
  toColdest: -Infinity,
  step: 0,
  factor: 1,
});

/** On the common scale. Nothing below it bounds a thawing or freezing core. */
const FREEZING = onCommonScale({ hundredths: 0, unit: '°C' });
/** Tolerance of floats: exactly at the bound is not faster. */
const EDGE = 1e-6;

/** Lets time pass to the instant first. */
export function tooFast(speed: CoreSpeed, { at, cold, warm }: Instant): TooFast | undefined {
  if (speed.rate === Infinity) return undefined;
  const { hottest, coldest, error } = speed.around;
  pass(speed, at);
  if (hottest - cold + error < speed.toHottest - EDGE) return 'rises faster than the piece can';
  return warm - coldest + error < speed.toColdest - EDGE ? 'falls faster than the piece can' : undefined;
}

/**
 * The colder of two values must be able to rise to what follows, the warmer to fall to it. A core at freezing is let
 * freeze on at any speed: this law does not hold for ice, and a core too cold is no danger.
 */
export function takeForCore(speed: CoreSpeed, { cold, warm }: Instant): void {
  const { hottest, coldest, error } = speed.around;
  speed.toHottest = Math.max(speed.toHottest, hottest - Math.max(cold, FREEZING) - error);
  speed.toColdest = warm <= FREEZING ? -Infinity : Math.max(speed.toColdest, warm - coldest - error);
}

/** A core beyond its surroundings returns at any speed: that distance does not shrink. */
function pass(speed: CoreSpeed, at: number): void {
  const step = at - speed.at;
  speed.at = at;
  if (step !== speed.step) {
    speed.step = step;
    speed.factor = Math.exp(-speed.rate * step);
  }
  if (speed.toHottest > 0) speed.toHottest *= speed.factor;
  if (speed.toColdest > 0) speed.toColdest *= speed.factor;
}

export const copyOfSpeed = (speed: CoreSpeed): CoreSpeed => ({
  rate: speed.rate,
  around: speed.around,
  at: speed.at,
  toHottest: speed.toHottest,
  toColdest: speed.toColdest,
  step: speed.step,
  factor: speed.factor,
});
