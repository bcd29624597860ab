import { scaleErrorOf, type InstrumentErrors } from '../instruments/instrument-errors';
import type { Degrees } from '../quantity/temperature';
import type { Plain } from './measurement';
import { aroundCore, type Surroundings } from '../thermal/around-core';
import { beginSpeed, rateOf, type CoreSpeed } from '../thermal/core-speed';
import type { AsKept } from '../thermal/instant';
import { unknownPiece, type Piece } from '../thermal/piece';
import type { CoolingContext } from '../kinds/cooling/stage-span';

/** The control point that asks when chilling began, and what was answered there; the worst of the answers counts. */
export type ChillingBegan = { askedAt: string; answers: readonly (AsKept & { at: number })[] };

/**
 * What a curve is judged with, besides its readings. Instants are epoch milliseconds and are always told, never asked
 * for.
 */
export type CurveContext = CoolingContext & {
  /** When chilling began, for a limit on the time between cooking and chilling. */
  chillingBegan?: ChillingBegan;
  /**
   * What the thermometer may be wrong by, either way: a difference, ± 1 °C is ± 1.8 °F. Each reading is then taken as
   * the worse (FSIS-GD-2021-14, p. 20: the instrument's tolerance is added to the limit).
   */
  instrumentError?: Degrees;
  /** What the pH meter, and the scale in each weighing (femtograms), may be wrong by, either way. */
  acidError?: Plain;
  scaleError?: bigint;
  /** The piece whose core is read, and what it lies in: together the fastest that core can move. */
  piece?: Piece;
  surroundings?: Surroundings;
};

/** The errors that a plan states, as a series is judged with them. */
export const allowingFor = ({
  temperature,
  pH,
  mass,
}: InstrumentErrors = {}): Pick<CurveContext, 'instrumentError' | 'acidError' | 'scaleError'> => ({
  instrumentError: temperature,
  acidError: pH,
  scaleError: scaleErrorOf(mass),
});

/** What must be known before the first reading; the rest is told when a verdict is asked for. */
export type KnownBefore = Pick<CurveContext, 'startAt' | 'instrumentError' | 'piece' | 'surroundings'>;

/** An instant that is no number is as good as none: it is left out. */
export const usableContext = (context: CurveContext): CurveContext => {
  const { now, startAt, chillingBegan } = context;
  const began = chillingBegan && { ...chillingBegan, answers: chillingBegan.answers.filter(({ at }) => Number.isFinite(at)) };
  return Object.assign({}, context, { now: finite(now), startAt: finite(startAt), chillingBegan: began });
};

/** The error on the common scale; undefined when it is no figure, in which case nothing can be judged. */
export function errorOf({ instrumentError }: KnownBefore): number | undefined {
  if (instrumentError === undefined) return 0;
  const { hundredths, unit } = instrumentError;
  return Number.isSafeInteger(hundredths) ? Math.abs(hundredths) * (unit === '°F' ? 5 : 9) : undefined;
}

/** How fast the core can move. Of a piece that is no figure not at all: nothing is judged by it. */
export const speedOf = (known: KnownBefore): CoreSpeed =>
  beginSpeed(rateOf(known.piece ?? unknownPiece) ?? 0, aroundCore(known.surroundings, errorOf(known) ?? 0));

const finite = (instant: number | undefined): number | undefined => (Number.isFinite(instant) ? instant : undefined);
