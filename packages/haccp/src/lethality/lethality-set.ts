import type { Source } from '../limits/source';

export type Organism =
  | 'Salmonella'
  | 'Listeria monocytogenes'
  | 'Escherichia coli'
  | 'Escherichia coli O157'
  | 'Clostridium perfringens, vegetative';

/**
 * How fast heat kills one organism, by one study or one table: D(T) = D of reference × 10^((reference − T) ÷ z).
 * Sets for one organism differ by a factor of five to eight, so no figure is ever given without the name of its set.
 */
export type LethalitySet = {
  /** Organism and origin in a few words, said with every figure: "Salmonella, by the meat table". */
  name: string;
  organism: Organism;
  /** Minutes for a tenth to survive (one log10 reduction) at the reference temperature. */
  minutesPerLog: number;
  referenceCelsius: number;
  /** Degrees Celsius by which D changes tenfold: a difference, 1 °C of z is 1.8 °F. */
  zCelsius: number;
  source: Source;
  /** `mean` of many studies is no upper bound; `reference` is what a table or an authority works with. */
  use: 'reference' | 'comparison' | 'mean';
  note: string;
};
