import type { Deviation, ProductConcerned } from '@larderbook/contracts';
import type { EnteredMass, Quantity } from '@larderbook/haccp';

type Weight = Deviation['atStake'];

export const weightOf = ({ value, unit }: EnteredMass): Quantity => ({ value: String(value), unit });

/** `all` only where a part is decided already. */
export const leftToDecide = ({
  undecided,
  atStake,
}: Pick<ProductConcerned, 'undecided' | 'atStake'>): { weight: Quantity; all?: Quantity } =>
  undecided.grams === atStake.grams ? { weight: weightOf(atStake) } : { weight: weightOf(undecided), all: weightOf(atStake) };

export const lesser = (a: Weight, b: Weight): Weight => (b.grams < a.grams ? b : a);
