import type { Plain } from '../limits/measurement';
import type { MassUnit } from '../quantity/mass';
import type { Degrees } from '../quantity/temperature';
import { massOf } from '../quantity/weigh';

/** Whole thousandths of a unit. */
export type ScaleError = { thousandths: number; unit: MassUnit };

/** Either way, as the plan states. Every verdict takes the worse within it; an unstated error is not assumed. */
export type InstrumentErrors = {
  temperature?: Degrees;
  /** Of the scale for ingredients and marked pieces, per weighing; includes half of its step. */
  mass?: ScaleError & {
    /** Thousandths of the unit. */
    step?: number;
  };
  /** Of the scale for meat, per weighing. */
  meat?: ScaleError;
  pH?: Plain;
  aw?: Plain;
};

/** Femtograms; zero where nothing is stated. */
export const scaleErrorOf = (error: ScaleError | undefined): bigint =>
  error ? massOf({ value: Math.abs(error.thousandths) / 1000, unit: error.unit }) : 0n;

/** Fine enough for curing salt. Common practice, no source. */
const USUAL_STEP = massOf({ value: 0.1, unit: 'g' });

/** Femtograms; a tenth of a gram where nothing is stated. */
export const scaleStepOf = ({ mass }: InstrumentErrors = {}): bigint =>
  mass?.step ? massOf({ value: mass.step / 1000, unit: mass.unit }) : USUAL_STEP;
