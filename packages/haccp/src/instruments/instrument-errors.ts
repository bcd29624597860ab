import type { Plain } from '../limits/measurement';
import type { MassUnit } from '../quantity/mass';
import type { Degrees } from '../quantity/temperature';
import { massOf } from '../quantity/weigh';

/** What a scale may be wrong by, in whole thousandths of a unit. */
export type ScaleError = { thousandths: number; unit: MassUnit };

/**
 * What the instruments of a control point may be wrong by, either way, as its plan states it. Every verdict takes the
 * worse within it; where nothing is stated, nothing is assumed.
 */
export type InstrumentErrors = {
  temperature?: Degrees;
  /** Of the scale for ingredients and marked pieces, in each weighing; half of its step belongs to it. */
  mass?: ScaleError & {
    /** What it shows steps of, in thousandths of the unit. */
    step?: number;
  };
  /** Of the scale for meat, in each weighing. */
  meat?: ScaleError;
  pH?: Plain;
  aw?: Plain;
};

/** Femtograms; none where nothing is stated. */
export const scaleErrorOf = (error: ScaleError | undefined): bigint =>
  error ? massOf({ value: Math.abs(error.thousandths) / 1000, unit: error.unit }) : 0n;

/** A scale fine enough for curing salt. Common practice, no source. */
const USUAL_STEP = massOf({ value: 0.1, unit: 'g' });

/** Femtograms that the scale for ingredients shows steps of; a tenth of a gram where nothing is stated. */
export const scaleStepOf = ({ mass }: InstrumentErrors = {}): bigint =>
  mass?.step ? massOf({ value: mass.step / 1000, unit: mass.unit }) : USUAL_STEP;
