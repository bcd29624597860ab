import { percentOf } from './percent-of';
import type { Ratio } from './curing-species';
import { faultOf, type OrFault } from './fault';

/** Percent by weight: salt ÷ (salt + water). */
export const brineStrength = (salt: bigint, water: bigint): OrFault<Ratio> =>
  salt < 0n || water < 0n ? belowNothing : percentOf(salt, salt + water);

/** Percent of the green weight: (pumped − green) ÷ green. */
export const pumpPercent = (green: bigint, pumped: bigint): OrFault<Ratio> =>
  pumped < green ? faultOf('lighter-than-before-pumping') : percentOf(pumped - green, green);

/**
 * Percent, from analyses in one unit (thousandths of a percent, or weights). `salt/(salt+water)` is the definition of
 * FSIS training material "Principles of Preservation of Shelf-Stable Dried Meat Products" (2005), p. 160, and of
 * FSIS-GD-2023-0002; `salt/water` is what some authors mean. Name it on the record.
 */
export function saltInWaterPhase(salt: bigint, water: bigint, formula: WaterPhase = 'salt/(salt+water)'): OrFault<Ratio> {
  if (salt < 0n || water < 0n) return belowNothing;
  return percentOf(salt, formula === 'salt/water' ? water : salt + water);
}
export type WaterPhase = 'salt/(salt+water)' | 'salt/water';

/** From analyses in one unit. A labelling standard, no proof of safety. */
export function moistureToProtein(moisture: bigint, protein: bigint): OrFault<Ratio> {
  if (moisture < 0n || protein <= 0n) return faultOf('not-analysed');
  return { numerator: moisture, denominator: protein };
}

const belowNothing = faultOf('salt-or-water-below-nothing');
