import type { Deviation, ProductConcerned } from '@larderbook/contracts';
import type { EnteredMass, Quantity } from '@larderbook/haccp';

type Weight = Deviation['atStake'];

/** A weight as a figure: 25.9 lb. */
export const weightOf = ({ value, unit }: EnteredMass): Quantity => ({ value: String(value), unit });

/** What is still to decide, and of how much in all where a part of it is decided. */
export const leftToDecide = ({
  undecided,
  atStake,
}: Pick<ProductConcerned, 'undecided' | 'atStake'>): { weight: Quantity; all?: Quantity } =>
  undecided.grams === atStake.grams ? { weight: weightOf(atStake) } : { weight: weightOf(undecided), all: weightOf(atStake) };

export const lesser = (a: Weight, b: Weight): Weight => (b.grams < a.grams ? b : a);
