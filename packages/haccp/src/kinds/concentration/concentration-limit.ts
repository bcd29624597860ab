import type { RestrictedSubstance } from '../../formula/restricted-substance';
import type { Cited } from '../../limits/source';

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
