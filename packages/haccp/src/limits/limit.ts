import type { FermentationLimit } from '../fermenting/fermentation-limit';
import type { FigureLimit } from '../formula/figure-limit';
import type { Thickness } from '../freezing/judge-freezing';
import type { Species } from '../growth/growth-set';
import type { LethalitySet } from '../lethality/lethality-set';
import type { PrintedTemperature } from '../quantity/temperature';
import type { LimitCondition } from './limit-condition';
import type { Support } from './support';

/**
 * Where a figure comes from. An unconfirmed figure is shown as such and is never a default. `support` is what the
 * adopter of a plan says of it, and goes with the figure wherever it is judged or printed.
 */
export type Source = { citation: string; edition: string; confirmed: boolean; url?: string; support?: Support };

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
/**
 * `counted: 'stage'` from this stage's `from`; `counted: 'start'` from where the first stage is counted (6 h in all);
 * `counted: 'end of cooking'` from when cooking ended, whatever the core showed then.
 */
export type CoolingStage = { to: PrintedTemperature; withinSeconds: number } & (
  | { from: PrintedTemperature; counted: 'stage' | 'start' }
  | { from?: undefined; counted: 'end of cooking' }
);

/** Met when the total time between two temperatures does not exceed `maxSeconds`. */
export type BandTimeLimit = Cited & {
  kind: 'bandTime';
  from: PrintedTemperature;
  to: PrintedTemperature;
  maxSeconds: number;
  longestGapSeconds: number;
};

/** Met when a person answers that the statement holds, and says what was seen. */
export type AttestationLimit = Cited & { kind: 'attestation'; statement: string; asks?: AskedFor };
/** What is recorded besides the answer: the moment itself, from which a clock starts, or how humid a cook was. */
export type AskedFor = 'moment' | 'humidity';

/**
 * Met when the integrated kill reaches `log10`, in whole hundredths. Printed rows come first: this is for a process
 * that an authority supports, and without one named nothing is met.
 */
export type LethalityLimit = Cited & {
  kind: 'lethality';
  set: LethalitySet;
  log10: number;
  /** Nothing colder is counted. */
  floor: PrintedTemperature;
  /** Who supports the process, and where the letter is filed. */
  authority: string;
  longestGapSeconds: number;
};

/**
 * Met when the growth of C. perfringens while cooling, as predicted for cooked meat without cure, stays at or below
 * `log10`, in whole hundredths. A screening: it informs, and it never clears a lot alone.
 */
export type GrowthLimit = Cited & {
  kind: 'growth';
  species: Species | 'mixed or unknown';
  log10: number;
  longestGapSeconds: number;
};

/** Met when the pH is down before too many degree-hours of the chamber have added up. */
export type DegreeHoursLimit = FermentationLimit & { kind: 'degreeHours' };

/** Met when so much of the start weight is gone, in % with at most four decimals. */
export type WeightLossLimit = Cited & { kind: 'weightLoss'; percent: number };

/** Met when any printed row of frozen time is there, by the air around pieces of a thickness or by their centre. */
export type FreezingLimit = Cited & {
  kind: 'freezing';
  read: { what: 'freezer'; thickness: Thickness } | { what: 'centre' };
  longestGapSeconds: number;
};

/** What has to hold before a limit may be used at all; absent where it is for anything. */
export type Conditioned = { conditions?: LimitCondition[] };

export type CriticalLimit = AnyLimit & Conditioned;
type AnyLimit =
  | RangeLimit
  | FigureLimit
  | ConcentrationLimit
  | CurveLimit
  | DegreeHoursLimit
  | WeightLossLimit
  | FreezingLimit
  | AttestationLimit;

/** Limits judged from the temperatures of one product's core, reading by reading. */
export type CurveLimit = DwellLimit | CoolingLimit | BandTimeLimit | LethalityLimit | GrowthLimit;

/** Limits judged from a series of readings rather than from one. */
export type SeriesLimit = CurveLimit | DegreeHoursLimit | WeightLossLimit | FreezingLimit;
