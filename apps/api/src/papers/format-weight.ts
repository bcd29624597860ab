import { massIn, massOf, formatMass, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import type { Telling } from './telling';

/** Decimals that a scale of the trade shows. */
const shown: Record<MassUnit, number> = { g: 1, kg: 3, oz: 2, lb: 3 };
const whole = { g: 'kg', kg: 'kg', oz: 'lb', lb: 'lb' } as const;

/** Exactly as entered: "36.4 lb". */
export const formatEntered = ({ value, unit }: EnteredMass): string => `${value} ${unit}`;

/** Rounds a derived weight once. */
export const formatWeight = (mass: bigint, unit: MassUnit): string => formatMass(mass, unit, shown[unit]);

/** In kilograms or pounds. */
export const formatTotal = (count: number, net: EnteredMass): string => formatWeight(massOf(net) * BigInt(count), whole[net.unit]);

/** "+ 0.4 g", or "as targeted" when the difference would not show. */
export function formatDifferenceTo(target: bigint, weighed: EnteredMass, say: Telling['say']): string {
  const off = massOf(weighed) - target;
  const said = formatWeight(off < 0n ? -off : off, weighed.unit);
  return said.startsWith('0 ') ? say('as-targeted') : `${off < 0n ? '−' : '+'} ${said}`;
}

export type FormatGrams = (grams: number) => string;

/** "22.68 kg" or "50 lb"; grams below a pound or a kilogram. */
export const formatGramsFor =
  (units: 'US' | 'metric'): FormatGrams =>
  (grams) => {
    const { value, unit } = massIn(units, grams);
    return `${value} ${unit}`;
  };
