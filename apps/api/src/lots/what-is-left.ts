import { isNegligible, type Coded } from '@larderbook/haccp';
import { sentence } from '../platform/account';
import type { LotWeights } from './lot-weights.queries';

export type InPackages = Pick<LotWeights, 'packed' | 'shipped' | 'aside'>;

/** Femtograms in packages that may still leave. */
export const leftIn = (stock: InPackages): bigint => stock.packed - stock.shipped - asideIn(stock);

/** Femtograms in packages that decisions keep from leaving. */
export const asideIn = ({ aside }: Pick<InPackages, 'aside'>): bigint => aside.condemned + aside.toRework + aside.opened;

/**
 * Everything has gone into other lots, been removed or been condemned; packages that are left belong to what was
 * condemned. Weights taken one by one never add up to the gram and some of a lot stays on tables and trays, so a
 * hundredth of it counts as nothing (common practice, no source).
 */
export function isUsedUp(weights: LotWeights): boolean {
  const { wentIn, packed, condemned, aside } = weights;
  return wentIn > 0n && isNegligible(keptOf(weights), wentIn) && (packed === 0n || condemned > 0n || aside.opened > 0n);
}

const keptOf = ({ wentIn, removed, condemned, reworked, shipped }: LotWeights): bigint => wentIn - removed - reworked - condemned - shipped;

/** All of it was condemned: none of it has left, nor gone into another lot. */
export function whyCondemned(weights: LotWeights): Coded | undefined {
  const { wentIn, condemned, destroyed, reworked, shipped } = weights;
  if (condemned === 0n || reworked > 0n || shipped > 0n || !isNegligible(keptOf(weights), wentIn)) return undefined;
  return sentence(destroyed < condemned ? 'all-condemned' : 'all-destroyed');
}

/** What is left of it may neither be packed nor leave. */
export function isAllToRework(weights: LotWeights): boolean {
  const kept = keptOf(weights);
  return weights.aside.pending > 0n && kept > 0n && isNegligible(kept - weights.aside.pending, kept);
}
