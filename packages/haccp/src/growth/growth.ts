import type { GrowthSet } from './growth-set';

/** log10 growth of C. perfringens. */
export type GrowthFigures = {
  /** As if the spores grew from the first moment: no model of the lag can give more. */
  readonly noLag: number;
  readonly withLag: number;
};

/**
 * A figure of growth. It cannot be had without the words "model estimate", its model, its set and the set's version,
 * and what may be claimed for it.
 */
export type Growth = {
  readonly is: 'model estimate';
  readonly model: typeof GROWTH_MODEL;
  readonly set: GrowthSet;
  /** By straight lines between the readings. */
  readonly byStraightLines: GrowthFigures;
  /** The same with the fastest rate between its ends taken over every gap longer than tolerated. */
  readonly atMost: GrowthFigures;
  /** Where growth goes on outside the readings; with either, every figure is "at least". */
  readonly unseen: readonly Unseen[];
  readonly restsOn: { readings: number; from: number; to: number };
  readonly claim: typeof GROWTH_CLAIM;
};

export type Unseen = 'before the first reading' | 'after the last reading';

export const GROWTH_MODEL = 'C. perfringens: rate of Juneja et al. 2011, lag of Baranyi and Roberts 1994';

/**
 * The code of the claim that goes with every figure, from eleven comparisons with published cooling trials of uncured meat (Juneja
 * 2008; Osterbauer 2017; Redondo-Solano 2013; Glass 2024 and others, by their abstracts).
 */
export const GROWTH_CLAIM = 'growth-claim';

/** What a screen shows: the model is not good to decimals. */
export type GrowthClass = 'below 0.5 log' | '0.5 to 1 log' | '1 to 2 log' | 'above 2 log';

/** On a border the higher class; a figure that is no number is in the highest. */
export function growthClass(log10: number): GrowthClass {
  if (log10 < 0.5) return 'below 0.5 log';
  if (log10 < 1) return '0.5 to 1 log';
  return log10 < 2 ? '1 to 2 log' : 'above 2 log';
}
