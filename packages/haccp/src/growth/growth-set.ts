import type { Source } from '../limits/source';

export type Species = 'beef' | 'chicken' | 'pork';

/**
 * Clostridium perfringens in one cooked, uncured meat while it cools, in log10 per hour: r(T) = b² (T − Tmin)² (1 −
 * e^(c (T − Tmax))) between Tmin and Tmax, else 0. T in °C.
 */
export type GrowthSet = {
  species: Species;
  /** Said with every figure. */
  name: string;
  /** Changes with any of the parameters. */
  version: string;
  b: number;
  minCelsius: number;
  c: number;
  maxCelsius: number;
  /** State of the spores at the end of cooking; at constant temperature the lag is ln(1 + 1/q0) ÷ (ln 10 × r). */
  q0: number;
  source: Source;
};

/**
 * Read as log10 per hour: the copy states no unit, and a natural-log rate gives a quarter of what was observed. As
 * log10 it agrees with the same group's beef model of 2008, with the optima of Huang 2015 and with three cooling
 * studies.
 */
const source: Source = {
  citation:
    'Juneja, Marks, Huang and Thippareddi, Food Microbiol 28:791-795, from a public collection of models; the table ' +
    'of the paper itself was not read',
  edition: '2011; collection of 2020',
  confirmed: false,
};

type Parameters = Pick<GrowthSet, 'b' | 'minCelsius' | 'c' | 'maxCelsius' | 'q0'>;

const cooked = (species: Species, parameters: Parameters): GrowthSet => ({
  species,
  name: `Juneja et al. 2011, cooked uncured ${species}`,
  version: '1',
  ...parameters,
  source,
});

export const uncuredBeef = cooked('beef', { b: 0.05, minCelsius: 10.15, c: 0.238, maxCelsius: 53, q0: 0.0699 });
export const uncuredChicken = cooked('chicken', { b: 0.048, minCelsius: 9.74, c: 0.208, maxCelsius: 52.1, q0: 0.0105 });
export const uncuredPork = cooked('pork', { b: 0.047, minCelsius: 10.69, c: 0.252, maxCelsius: 52.8, q0: 0.0137 });

const ofSpecies: Record<Species, GrowthSet> = { beef: uncuredBeef, chicken: uncuredChicken, pork: uncuredPork };

export const growthSetsFor = (species: Species | 'mixed or unknown'): readonly GrowthSet[] =>
  species in ofSpecies ? [ofSpecies[species as Species]] : [uncuredBeef, uncuredChicken, uncuredPork];
