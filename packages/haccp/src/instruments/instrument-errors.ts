import type { Plain } from '../limits/measurement';
import { decimalText } from '../quantity/decimal';
import { sayDifference } from '../quantity/degrees';
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

/** "± 0.5 g of the scale for ingredients and pieces", one for each that is stated. */
export function sayErrors({ temperature, mass, meat, pH, aw }: InstrumentErrors): string[] {
  return [
    ...(temperature ? [`± ${sayDifference(temperature.hundredths, temperature.unit)} of the thermometer`] : []),
    ...(mass ? [`${sayScale(mass)} of the scale for ingredients and pieces${sayStep(mass)}`] : []),
    ...(meat ? [`${sayScale(meat)} of the scale for meat`] : []),
    ...(pH ? [`± ${sayPlain(pH)} of the pH meter`] : []),
    ...(aw ? [`± ${sayPlain(aw)} of the water activity meter`] : []),
  ];
}

const sayScale = ({ thousandths, unit }: ScaleError): string => `± ${sayPlain({ thousandths })} ${unit}`;
const sayStep = ({ step, unit }: ScaleError & { step?: number }): string =>
  step ? `, which shows steps of ${sayPlain({ thousandths: step })} ${unit}` : '';
const sayPlain = ({ thousandths }: Plain): string => decimalText(Math.abs(thousandths), 3);
