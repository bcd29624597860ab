import type { RestrictedSubstance } from '../../formula/restricted-substance';
import type { Cited } from '../../limits/source';

/** On the meat block, in exact hundredths of a ppm; `printed` is how the source writes it. */
export type ConcentrationLimit = Cited & {
  kind: 'concentration';
  substance: RestrictedSubstance;
  min?: number;
  max?: number;
  /** Exact, where hundredths cannot hold it (546.875 ppm). It decides; `max` is at or below it. */
  maxThousandths?: number;
  /** Where not of the substance weighed: nitrite as NO₂ ion. Converted exactly, by molar mass. */
  countedAs?: CountedAs;
  printed: string;
};
export type CountedAs = 'NO₂' | 'NO₃';
