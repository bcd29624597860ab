import type { Source } from '../limits/source';

export type Organism =
  | 'Salmonella'
  | 'Listeria monocytogenes'
  | 'Escherichia coli'
  | 'Escherichia coli O157'
  | 'Clostridium perfringens, vegetative';

/**
 * D(T) = D of reference × 10^((reference − T) ÷ z), by one study or table. Sets for one organism differ by a factor of
 * five to eight, so no figure is given without its set.
 */
export type LethalitySet = {
  /** Organism and origin: "Salmonella, by the meat table". */
  name: string;
  organism: Organism;
  /** For one log10 reduction at the reference temperature. */
  minutesPerLog: number;
  referenceCelsius: number;
  /** Changes D tenfold. A difference: 1 °C of z is 1.8 °F. */
  zCelsius: number;
  source: Source;
  /** `mean` of many studies is no upper bound; `reference` is what a table or an authority works with. */
  use: 'reference' | 'comparison' | 'mean';
  note: string;
};
