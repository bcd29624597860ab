import type { Deviation, ProductConcerned } from '@larderbook/contracts';

type Weight = Deviation['atStake'];

/** "25.9 lb" */
export const sayWeight = ({ value, unit }: Pick<Weight, 'value' | 'unit'>): string => `${value} ${unit}`;

/** "25.9 lb of 28.7 lb", of what is still to decide; "28.7 lb" while nothing is decided. */
export const sayLeftToDecide = ({ undecided, atStake }: Pick<ProductConcerned, 'undecided' | 'atStake'>): string =>
  undecided.grams === atStake.grams ? sayWeight(atStake) : `${sayWeight(undecided)} of ${sayWeight(atStake)}`;

export const lesser = (a: Weight, b: Weight): Weight => (b.grams < a.grams ? b : a);
