import type { PrintedTemperature } from '../quantity/temperature';

/** Where a figure comes from. An unconfirmed figure is shown as such and is never a default. */
export type Source = { citation: string; edition: string; confirmed: boolean; url?: string };

/** What a plain value is a measurement of. Temperatures compare in the unit read; the others are pure numbers. */
export type Measured = 'temperature' | 'pH' | 'aw' | 'percent';

type Cited = { source: Source };

/**
 * Met when the value lies within the bounds, both included unless `signs` says otherwise. Temperatures in hundredths
 * per printed unit; others ×1000.
 */
export type RangeLimit = Cited & {
  kind: 'range';
  measured: Measured;
  min?: PrintedTemperature | number;
  max?: PrintedTemperature | number;
  signs?: StrictSigns;
};
/** Where the source says "above" or "less than", the figure itself is outside. */
export type StrictSigns = { min?: '>'; max?: '<' };

/**
 * Ingoing concentration on the meat block. `max` and `min` are exact hundredths of a ppm; `printed` is how the source
 * writes it.
 */
export type ConcentrationLimit = Cited & {
  kind: 'concentration';
  substance: RestrictedSubstance;
  min?: number;
  max?: number;
  /**
   * The exact maximum in thousandths of a ppm, where hundredths cannot hold it (546.875 ppm). It decides; `max` is at
   * or below it.
   */
  maxThousandths?: number;
  /**
   * What the figures are figures of, where it is not the substance weighed: nitrite as NO₂ ion. Weighings are converted
   * by molar mass, exactly.
   */
  countedAs?: CountedAs;
  printed: string;
};
export type CountedAs = 'NO₂' | 'NO₃';
export type RestrictedSubstance = 'sodium nitrite' | 'sodium nitrate' | 'sodium erythorbate' | 'phosphate';

/** Met when any printed row is satisfied: the core stayed at or above `at` for `seconds`. */
export type DwellLimit = Cited & { kind: 'dwell'; rows: DwellRow[]; longestGapSeconds: number };
export type DwellRow = { at: PrintedTemperature; seconds: number };

/** Met when every stage's lower bound is reached in time. */
export type CoolingLimit = Cited & {
  kind: 'cooling';
  stages: CoolingStage[];
  /** Longest time from the end of cooking to the start of chilling, when the source asks for one. */
  startWithinSeconds?: number;
  longestGapSeconds: number;
};
/** `counted: 'stage'` from this stage's `from`; `counted: 'start'` from the first stage's `from` (6 h in all). */
export type CoolingStage = {
  from: PrintedTemperature;
  to: PrintedTemperature;
  withinSeconds: number;
  counted: 'stage' | 'start';
};

/** Met when the total time between two temperatures does not exceed `maxSeconds`. */
export type BandTimeLimit = Cited & {
  kind: 'bandTime';
  from: PrintedTemperature;
  to: PrintedTemperature;
  maxSeconds: number;
  longestGapSeconds: number;
};

/** Met when a person answers that the statement holds, and says what was seen. */
export type AttestationLimit = Cited & { kind: 'attestation'; statement: string };

export type CriticalLimit =
  RangeLimit | ConcentrationLimit | DwellLimit | CoolingLimit | BandTimeLimit | AttestationLimit;

/** Limits that are judged from a series of readings rather than from one. */
export type CurveLimit = DwellLimit | CoolingLimit | BandTimeLimit;
