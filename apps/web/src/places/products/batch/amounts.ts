import { roundedMass, massFromGrams, type MassUnit, type Quantity, type Rounding } from '@larderbook/haccp';

const gramsIn: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };

/** A weight in the shop's own unit. */
export const ownFigure = (grams: number, heavy: MassUnit, light: MassUnit): Quantity =>
  figure(grams, grams >= gramsIn[heavy] ? heavy : light);

export const inGrams = (grams: number, inward: Rounding = 'nearest'): Quantity =>
  figure(grams, 'g', grams < 1000 || inward !== 'nearest' ? 1 : 0, inward);

/** Kilograms, or pounds and ounces. */
export const inHeavy = (grams: number, heavy: MassUnit, inward: Rounding = 'nearest'): Quantity[] =>
  heavy === 'lb' ? poundsAndOunces(grams, inward) : [figure(grams, 'kg', 3, inward)];

/** Grams, as weighed in the kitchen; from a pound or a kilogram on, the shop's own unit too. */
export const toWeighIn = (grams: number, heavy: MassUnit, inward: Rounding = 'nearest'): Quantity[][] =>
  grams < gramsIn[heavy] ? [[inGrams(grams, inward)]] : [[inGrams(grams, inward)], inHeavy(grams, heavy, inward)];

/** Rounded inward to a tenth of a gram, so that neither bound is passed by reading it. */
export const allowedFigure = (grams: number, rounding: Rounding): Quantity => figure(grams, 'g', 1, rounding);

/** As a butcher's scale shows it; less than a pound in ounces. */
function poundsAndOunces(grams: number, inward: Rounding): Quantity[] {
  const pounds = Math.floor(grams / gramsIn.lb);
  const ounces = figure(grams - pounds * gramsIn.lb, 'oz', 2, inward);
  const whole: Quantity[] = pounds === 0 ? [] : [{ value: String(pounds), unit: 'lb' }];
  return pounds > 0 && ounces.value === '0' ? whole : [...whole, ounces];
}

/** The server answers grams with at most a few decimals. */
const figure = (grams: number, unit: MassUnit, decimals = unit === 'g' ? 1 : 2, rounding: Rounding = 'nearest'): Quantity =>
  roundedMass(massFromGrams(grams.toFixed(9)), unit, decimals, rounding);
