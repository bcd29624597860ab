import type { InputOf, calculateBatch } from '@larderbook/contracts';
import type { BatchByPercent } from '@larderbook/haccp';

/** The contract has checked that what is needed is given. */
export function batchFrom(given: InputOf<typeof calculateBatch>): BatchByPercent['from'] {
  const { from, trimmedMeat, packages, net, yieldPercent, yieldOn } = given as Required<typeof given>;
  return from === 'packages' ? { packages, net, yieldPercent, yieldOn } : { trimmedMeat };
}
