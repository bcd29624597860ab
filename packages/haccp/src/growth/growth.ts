import type { GrowthSet } from './growth-set';

/** Of C. perfringens, log10. */
export type GrowthFigures = {
  /** Spores grow from the first moment: no model of the lag gives more. */
  readonly noLag: number;
  readonly withLag: number;
};

/** No figure stands without "model estimate", model, set, version and claim. */
export type Growth = {
  readonly is: 'model estimate';
  readonly model: typeof GROWTH_MODEL;
  readonly set: GrowthSet;
  readonly byStraightLines: GrowthFigures;
  /** With the fastest rate of each gap longer than tolerated. */
  readonly atMost: GrowthFigures;
  /** Growth outside the readings; with either, every figure is "at least". */
  readonly unseen: readonly Unseen[];
  readonly restsOn: { readings: number; from: number; to: number };
  readonly claim: typeof GROWTH_CLAIM;
};

export type Unseen = 'before the first reading' | 'after the last reading';

export const GROWTH_MODEL = 'C. perfringens: rate of Juneja et al. 2011, lag of Baranyi and Roberts 1994';

/**
 * Code of the claim, from eleven comparisons with published cooling trials of uncured meat (Juneja 2008; Osterbauer
 * 2017; Redondo-Solano 2013; Glass 2024 and others, by their abstracts).
 */
export const GROWTH_CLAIM = 'growth-claim';

/** The model is not good to decimals. */
export type GrowthClass = 'below 0.5 log' | '0.5 to 1 log' | '1 to 2 log' | 'above 2 log';

/** On a border the higher class; NaN is in the highest. */
export function growthClass(log10: number): GrowthClass {
  if (log10 < 0.5) return 'below 0.5 log';
  if (log10 < 1) return '0.5 to 1 log';
  return log10 < 2 ? '1 to 2 log' : 'above 2 log';
}
