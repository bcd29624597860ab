import { massFromGrams, sayMass, type MassUnit, type Rounding } from '@larderbook/haccp';
import type { Shop } from './use-shop';

/** A weight the server reckoned, in the shop's unit: "22.68 kg", "50 lb"; below a pound or a kilo in grams. */
export function sayGrams(grams: number, units: Shop['units'], rounding: Rounding = 'nearest'): string {
  const [unit, heavy]: [MassUnit, number] = units === 'US' ? ['lb', 453.59237] : ['kg', 1000];
  const mass = massFromGrams(grams.toFixed(9));
  return Math.abs(grams) >= heavy ? sayMass(mass, unit, 2, rounding) : sayMass(mass, 'g', 1, rounding);
}
