import type { EstablishmentFields } from '@larderbook/contracts';
import { massFromGrams, sayMass, type MassUnit, type Rounding } from '@larderbook/haccp';

export type ShownUnits = EstablishmentFields['units'];

/** A weight the server reckoned, in the shop's unit: "22.68 kg", "50 lb"; below a pound or a kilo in grams. */
export function sayGrams(grams: number, units: ShownUnits, rounding: Rounding = 'nearest'): string {
  const heavy: [MassUnit, number] = units === 'US' ? ['lb', 453.59237] : ['kg', 1000];
  const [unit, isHeavy] = [heavy[0], Math.abs(grams) >= heavy[1]];
  return isHeavy ? sayMass(femtograms(grams), unit, 2, rounding) : sayMass(femtograms(grams), 'g', 1, rounding);
}

/**
 * The least and most of a curing ingredient, in grams to the tenth, rounded inward so that neither is passed by
 * reading it.
 */
export const sayLeast = (grams: number): string => sayMass(femtograms(grams), 'g', 1, 'up');
export const sayMost = (grams: number): string => sayMass(femtograms(grams), 'g', 1, 'down');

const femtograms = (grams: number): bigint => massFromGrams(grams.toFixed(9));
