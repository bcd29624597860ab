import { scaleErrorOf, type InstrumentErrors } from '../instruments/instrument-errors';
import { STEPS } from '../quantity/convert-degrees';
import type { Degrees } from '../quantity/temperature';
import type { Plain } from './measurement';
import { aroundCore, type Surroundings } from '../thermal/around-core';
import { beginSpeed, rateOf, type CoreSpeed } from '../thermal/core-speed';
import type { AsKept } from '../thermal/instant';
import { unknownPiece, type Piece } from '../thermal/piece';
import type { CoolingContext } from '../kinds/cooling/stage-span';

/** The control point where the question is asked; the worst answer counts. */
export type ChillingBegan = { askedAt: string; answers: readonly (AsKept & { at: number })[] };

/** Instants are epoch ms, always told, never asked for. */
export type CurveContext = CoolingContext & {
  /** For a limit on the time between cooking and chilling. */
  chillingBegan?: ChillingBegan;
  /**
   * Of the thermometer, either way: a difference, ± 1 °C is ± 1.8 °F. Each reading is taken as the worse
   * (FSIS-GD-2021-14, p. 20: the instrument's tolerance is added to the limit).
   */
  instrumentError?: Degrees;
  /** Either way: of the pH meter, and of the scale in each weighing (femtograms). */
  acidError?: Plain;
  scaleError?: bigint;
  /** Piece and surroundings bound the speed of its core. */
  piece?: Piece;
  surroundings?: Surroundings;
};

export const allowingFor = ({
  temperature,
  pH,
  mass,
}: InstrumentErrors = {}): Pick<CurveContext, 'instrumentError' | 'acidError' | 'scaleError'> => ({
  instrumentError: temperature,
  acidError: pH,
  scaleError: scaleErrorOf(mass),
});

/** Before the first reading; the rest is told when a verdict is asked for. */
export type KnownBefore = Pick<CurveContext, 'startAt' | 'instrumentError' | 'piece' | 'surroundings'>;

/** An instant that is no number is left out. */
export const usableContext = (context: CurveContext): CurveContext => {
  const { now, startAt, chillingBegan } = context;
  const began = chillingBegan && { ...chillingBegan, answers: chillingBegan.answers.filter(({ at }) => Number.isFinite(at)) };
  return Object.assign({}, context, { now: finite(now), startAt: finite(startAt), chillingBegan: began });
};

/** On the common scale; undefined when it is no figure, and nothing can be judged. */
export function errorOf({ instrumentError }: KnownBefore): number | undefined {
  if (instrumentError === undefined) return 0;
  const { hundredths, unit } = instrumentError;
  return Number.isSafeInteger(hundredths) ? Math.abs(hundredths) * STEPS[unit] : undefined;
}

/** Without a usable size the core cannot move: nothing is judged by it. */
export const speedOf = (known: KnownBefore): CoreSpeed =>
  beginSpeed(rateOf(known.piece ?? unknownPiece) ?? 0, aroundCore(known.surroundings, errorOf(known) ?? 0));

const finite = (instant: number | undefined): number | undefined => (Number.isFinite(instant) ? instant : undefined);
