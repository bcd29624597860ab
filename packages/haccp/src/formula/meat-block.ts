import { divide } from '../quantity/divide';
import { percentParts } from './formula';

/** Femtograms. Water, ice, spice and binder are no meat (9 CFR 424.21(c)). */
export type Input = { mass: bigint; isMeat: boolean };

/** Femtograms: the base of every ingoing concentration. */
export const sumMeatBlock = (inputs: readonly Input[]): bigint => inputs.reduce((sum, { mass, isMeat }) => (isMeat ? sum + mass : sum), 0n);

/**
 * Femtograms of trimmed meat = count × net weight ÷ yield, rounded up. @param yieldPercent packed weight as percent of
 * the meat block; above 100 where more is added than lost. Throws a RangeError on an unusable figure.
 */
export function meatForPackages(count: number, netWeight: bigint, yieldPercent: number): bigint {
  const parts = percentParts(yieldPercent);
  if (parts === undefined) throw new RangeError(`A yield of ${yieldPercent} % cannot be used`);
  if (!Number.isSafeInteger(count) || count <= 0) throw new RangeError(`${count} packages cannot be made`);
  if (netWeight <= 0n) throw new RangeError('A package has no net weight');
  return divide(BigInt(count) * netWeight * 1_000_000n, parts, 'up');
}
