import { onCommonScale } from '../quantity/convert-degrees';
import type { Instant } from './instant';
import { halfOf, isStirred, type Piece, type SolidPiece } from './piece';

/**
 * How fast the centre of a piece can follow its surface. A piece whose surface is at once, and wholly, as hot or as cold
 * as what it lies in comes nearer to that by the factor e^(−λ α t ÷ L²) at most: the first mode of the series in
 * Carslaw and Jaeger, Conduction of Heat in Solids, 1959 (λ the first eigenvalue squared, L half the smallest
 * dimension). A core that lags behind its surface, or a surface that comes up or down by and by, is slower. It says
 * nothing of injected steam or brine, of a piece cut apart or of a liquid that is stirred.
 */
const EIGENVALUE: Record<SolidPiece['shape'], number> = {
  slab: (Math.PI / 2) ** 2,
  cylinder: 2.404825557695773 ** 2,
  sphere: Math.PI ** 2,
};
/** Diffusivity in m²/s. Measured in meat above freezing: 1.2e-7 to 1.5e-7; rounded up, common practice, no source. */
const FASTEST = 1.6e-7;

/** λ α ÷ L² in one over milliseconds; without end where it is stirred; undefined when it has no usable dimension. */
export function rateOf(piece: Piece): number | undefined {
  if (isStirred(piece)) return Infinity;
  const half = halfOf(piece);
  return half && (EIGENVALUE[piece.shape] * FASTEST) / half ** 2 / 1000;
}

/** The share of the way to its surroundings that a core has at least still before it after so long (ms). */
export const leastLeft = (piece: Piece, milliseconds: number): number => Math.exp(-(rateOf(piece) as number) * milliseconds);

/** What bounds a core, on the common scale: how hot and how cold its surface can be, and what a reading may be off by. */
export type Around = { hottest: number; coldest: number; error: number };

export type TooFast = 'rises faster than the piece can' | 'falls faster than the piece can';

/**
 * A core up to the last reading taken for one: how far below the hottest and above the coldest it must still be. All
 * readings shrink these by the same factor in the same time, so the largest of all of them stands for each: a reading is
 * held against every one before it, over whatever lies between the two, and not only against its neighbour.
 */
export type CoreSpeed = {
  readonly rate: number;
  readonly around: Around;
  at: number;
  toHottest: number;
  toColdest: number;
  /** Loggers read at even steps: the factor is worked out when the step changes. */
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

/** On the common scale: what is still thawing or begins to freeze is held to nothing below it, and rises from it. */
const FREEZING = onCommonScale({ hundredths: 0, unit: '°C' });
/** Of a float: what is exactly at the bound is not faster. */
const EDGE = 1e-6;

/** Lets time pass up to an instant, and says how it moved too fast to be the core's, if it did. */
export function tooFast(speed: CoreSpeed, { at, cold, warm }: Instant): TooFast | undefined {
  if (speed.rate === Infinity) return undefined;
  const { hottest, coldest, error } = speed.around;
  pass(speed, at);
  if (hottest - cold + error < speed.toHottest - EDGE) return 'rises faster than the piece can';
  return warm - coldest + error < speed.toColdest - EDGE ? 'falls faster than the piece can' : undefined;
}

/**
 * Takes an instant for the core's. Of two values the colder must be able to rise to what follows, and the warmer to
 * fall to it. Already at freezing it may freeze on, which is another law and safe.
 */
export function takeForCore(speed: CoreSpeed, { cold, warm }: Instant): void {
  const { hottest, coldest, error } = speed.around;
  speed.toHottest = Math.max(speed.toHottest, hottest - Math.max(cold, FREEZING) - error);
  speed.toColdest = warm <= FREEZING ? -Infinity : Math.max(speed.toColdest, warm - coldest - error);
}

/** A core beyond its surroundings comes back to them, no sooner than it likes: nothing shrinks. */
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
