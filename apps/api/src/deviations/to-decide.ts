import { roundedMass, type Quantity } from '@larderbook/haccp';
import type { Concerned } from './held-products.queries';

export type ToDecide = { undecided: Quantity; atStake: Quantity };

/** Undefined when decisions cover all. */
export function toDecideOf(held: Concerned | undefined): ToDecide | undefined {
  if (!held || held.isCovered) return undefined;
  const { undecided, atStake, unit } = held;
  return { undecided: roundedMass(undecided, unit, 3, 'up'), atStake: roundedMass(atStake, unit, 3, 'up') };
}
