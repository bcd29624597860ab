import { massFromGrams, sayMass, type MassUnit, type Rounding } from '@larderbook/haccp';

const gramsIn: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };

/** A weight in the shop's own unit. */
export const sayOwn = (grams: number, heavy: MassUnit, light: MassUnit): string => say(grams, grams >= gramsIn[heavy] ? heavy : light);

export const sayInGrams = (grams: number, inward: Rounding = 'nearest'): string =>
  say(grams, 'g', grams < 1000 || inward !== 'nearest' ? 1 : 0, inward);

/** As it is weighed in the kitchen: grams, and beyond a pound or a kilogram the shop's own unit. */
export function sayToWeigh(grams: number, heavy: MassUnit, inward: Rounding = 'nearest'): string {
  const own = heavy === 'lb' ? sayPoundsAndOunces(grams, inward) : say(grams, 'kg', 3, inward);
  return grams < gramsIn[heavy] ? sayInGrams(grams, inward) : `${sayInGrams(grams, inward)} = ${own}`;
}

/** The least or most allowed in grams, rounded inward to the tenth so that neither is passed by reading it. */
export const sayAllowed = (grams: number | undefined, rounding: Rounding): string =>
  grams === undefined ? '' : sayMass(exactly(grams), 'g', 1, rounding);

/** A pound and more in pounds and ounces, as a butcher's scale shows it; less than a pound in ounces. */
export function sayPoundsAndOunces(grams: number, inward: Rounding = 'nearest'): string {
  const pounds = Math.floor(grams / gramsIn.lb);
  const ounces = say(grams - pounds * gramsIn.lb, 'oz', 2, inward);
  if (pounds === 0) return ounces;
  return ounces === '0 oz' ? `${pounds} lb` : `${pounds} lb ${ounces}`;
}

export const say = (grams: number, unit: MassUnit, decimals = unit === 'g' ? 1 : 2, rounding: Rounding = 'nearest'): string =>
  sayMass(exactly(grams), unit, decimals, rounding);

/** Grams as the book answers them: a number of at most a few decimals. */
const exactly = (grams: number): bigint => massFromGrams(grams.toFixed(9));
