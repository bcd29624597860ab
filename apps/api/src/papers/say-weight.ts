import { massOf, sayMass, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import { massOfGrams } from '../platform/kept-weight';
import type { Telling } from './telling';

/** Decimals that a scale of the trade shows. */
const shown: Record<MassUnit, number> = { g: 1, kg: 3, oz: 2, lb: 3 };
const whole = { g: 'kg', kg: 'kg', oz: 'lb', lb: 'lb' } as const;

/** Exactly as it was entered: "36.4 lb". */
export const sayEntered = ({ value, unit }: EnteredMass): string => `${value} ${unit}`;

/** A derived weight, rounded once for paper. */
export const sayWeight = (mass: bigint, unit: MassUnit): string => sayMass(mass, unit, shown[unit]);

/** So many packages of one weight, in kilograms or pounds. */
export const sayTotal = (count: number, net: EnteredMass): string => sayWeight(massOf(net) * BigInt(count), whole[net.unit]);

/** "+ 0.4 g", or "as targeted" when the difference would not show. */
export function sayDifferenceTo(target: bigint, weighed: EnteredMass, say: Telling['say']): string {
  const off = massOf(weighed) - target;
  const said = sayWeight(off < 0n ? -off : off, weighed.unit);
  return said.startsWith('0 ') ? say('as-targeted') : `${off < 0n ? '−' : '+'} ${said}`;
}

export type SayGrams = (grams: number) => string;

/** A weight that the book reckoned, as the pages say it: "22.68 kg", "50 lb"; below a pound or a kilo in grams. */
export const sayGramsFor = (units: 'US' | 'metric'): SayGrams => {
  const [unit, heavy]: [MassUnit, number] = units === 'US' ? ['lb', 453.59237] : ['kg', 1000];
  return (grams) => (Math.abs(grams) >= heavy ? sayMass(massOfGrams(grams), unit, 2) : sayMass(massOfGrams(grams), 'g', 1));
};
