import { massOf, formatMass, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import { massOfGrams } from '../platform/kept-weight';
import type { Telling } from './telling';

/** Decimals that a scale of the trade shows. */
const shown: Record<MassUnit, number> = { g: 1, kg: 3, oz: 2, lb: 3 };
const whole = { g: 'kg', kg: 'kg', oz: 'lb', lb: 'lb' } as const;

/** Exactly as it was entered: "36.4 lb". */
export const formatEntered = ({ value, unit }: EnteredMass): string => `${value} ${unit}`;

/** A derived weight, rounded once for paper. */
export const formatWeight = (mass: bigint, unit: MassUnit): string => formatMass(mass, unit, shown[unit]);

/** So many packages of one weight, in kilograms or pounds. */
export const formatTotal = (count: number, net: EnteredMass): string => formatWeight(massOf(net) * BigInt(count), whole[net.unit]);

/** "+ 0.4 g", or "as targeted" when the difference would not show. */
export function formatDifferenceTo(target: bigint, weighed: EnteredMass, say: Telling['say']): string {
  const off = massOf(weighed) - target;
  const said = formatWeight(off < 0n ? -off : off, weighed.unit);
  return said.startsWith('0 ') ? say('as-targeted') : `${off < 0n ? '−' : '+'} ${said}`;
}

export type FormatGrams = (grams: number) => string;

/** A weight that the book reckoned, as the pages say it: "22.68 kg", "50 lb"; below a pound or a kilo in grams. */
export const formatGramsFor = (units: 'US' | 'metric'): FormatGrams => {
  const [unit, heavy]: [MassUnit, number] = units === 'US' ? ['lb', 453.59237] : ['kg', 1000];
  return (grams) => (Math.abs(grams) >= heavy ? formatMass(massOfGrams(grams), unit, 2) : formatMass(massOfGrams(grams), 'g', 1));
};
