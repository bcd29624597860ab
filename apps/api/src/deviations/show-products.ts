import type { Deviation, ProductConcerned } from '@larderbook/contracts';
import { formatMass, type MassUnit } from '@larderbook/haccp';
import { gramsOf } from '../platform/kept-weight';
import type { Concerned } from './held-products.queries';
import type { OpenOnSame } from './open-on-same.queries';

/** To the thousandth; sent back as it reads, it is all of it. */
export const showWeight = (mass: bigint, unit: MassUnit): Deviation['atStake'] => ({
  value: Number.parseFloat(formatMass(mass, unit)),
  unit,
  grams: gramsOf(mass),
});

export function showProducts({ products, unit }: Concerned, deviationId: string, open: OpenOnSame): ProductConcerned[] {
  return products.map(({ id, kind, code, what, atStake, undecided, here, left }) => ({
    ...(kind === 'lot' ? { lotId: id } : { receiptId: id }),
    code,
    what,
    atStake: showWeight(atStake, unit),
    undecided: showWeight(undecided, unit),
    here: showWeight(here, unit),
    left: showWeight(left, unit),
    alsoOpen: open(id)
      .filter((other) => other.deviationId !== deviationId)
      .map((other) => ({
        deviationId: other.deviationId,
        number: other.number,
        undecided: showWeight(other.undecided, unit),
      })),
  }));
}
