import { massOf, sayMass, type EnteredMass, type MassUnit } from '@larderbook/haccp';

/** Decimals that a scale of the trade shows. */
const shown: Record<MassUnit, number> = { g: 1, kg: 3, oz: 2, lb: 3 };
const whole = { g: 'kg', kg: 'kg', oz: 'lb', lb: 'lb' } as const;

/** Exactly as it was entered: "36.4 lb". */
export const sayEntered = ({ value, unit }: EnteredMass): string => `${value} ${unit}`;

/** A derived weight, rounded once for paper. */
export const sayWeight = (mass: bigint, unit: MassUnit): string => sayMass(mass, unit, shown[unit]);

/** So many packages of one weight, in kilograms or pounds. */
export const sayTotal = (count: number, net: EnteredMass): string =>
  sayWeight(massOf(net) * BigInt(count), whole[net.unit]);

/** "+ 0.4 g", or "as targeted" when the difference would not show. */
export function sayDifferenceTo(target: bigint, weighed: EnteredMass): string {
  const off = massOf(weighed) - target;
  const said = sayWeight(off < 0n ? -off : off, weighed.unit);
  return said.startsWith('0 ') ? 'as targeted' : `${off < 0n ? '−' : '+'} ${said}`;
}
