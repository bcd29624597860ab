import { massFromGrams, massOf, roundedMass, type EnteredMass, type MassUnit, type Quantity, type Rounding } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';

export type ShownUnits = 'US' | 'metric';

/** Grams in each unit, only to say what is usual; weights themselves are converted exactly. */
const grams: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const decimals: Record<MassUnit, number> = { g: 2, kg: 3, oz: 2, lb: 3 };

const all = Object.keys(grams) as MassUnit[];

/** The units of a scale, the one that suits the weight first; usual is from `leastGrams` to `mostGrams`. */
export function massUnits(units: ShownUnits, mostGrams: number, leastGrams = 0): UnitChoice[] {
  const isHeavy = mostGrams >= 2 * grams[units === 'US' ? 'lb' : 'kg'];
  const suited: Record<ShownUnits, MassUnit[]> = {
    US: isHeavy ? ['lb', 'oz', 'g', 'kg'] : ['g', 'oz', 'lb', 'kg'],
    metric: isHeavy ? ['kg', 'g'] : ['g', 'kg'],
  };
  return suited[units].map((unit) => ({
    unit,
    least: upTo(leastGrams / grams[unit]),
    most: upTo(mostGrams / grams[unit]),
    decimals: decimals[unit],
  }));
}

/** The exact weight of a number on the keypad; nothing where its unit is no weight’s. */
export const femtogramsIn = ({ value, unit }: { value: number; unit: string }): bigint | undefined => {
  const known = all.find((each) => each === unit);
  return known && massOf({ value, unit: known });
};

/** A bound a person can read: three figures that count. */
const upTo = (most: number): number => Number(most.toPrecision(3));

/** What stands on the keypad as a weight. */
export const enteredMass = (value: number, unit: string): EnteredMass => ({ value, unit: massUnit(unit) });

function massUnit(unit: string): MassUnit {
  const known = all.find((each) => each === unit);
  if (!known) throw new RangeError(`${unit} is not a unit of a weight`);
  return known;
}

/** True when a weight is more than so many grams, compared exactly. */
export const isMoreThan = (weight: EnteredMass, limitGrams: number): boolean => massOf(weight) > massFromGrams(limitGrams.toFixed(9));

/** The same units with another first: the pad opens in it. */
export const beginningWith = (unit: string, choices: UnitChoice[]): UnitChoice[] =>
  [...choices].sort((one, other) => Number(other.unit === unit) - Number(one.unit === unit));

/** The unit in which a weight is weighed and said: pounds or kilograms from one on, grams below. */
export const unitFor = (weightGrams: number, units: ShownUnits): MassUnit => {
  const heavy = units === 'US' ? 'lb' : 'kg';
  return weightGrams >= grams[heavy] ? heavy : 'g';
};

const shown: Record<MassUnit, number> = { g: 1, kg: 3, oz: 2, lb: 3 };

/** A reckoned weight in the unit on the keypad: 1.06 lb. */
export const inUnit = (weightGrams: number, unit: string, rounding: Rounding = 'nearest'): Quantity =>
  roundedMass(massFromGrams(weightGrams.toFixed(9)), massUnit(unit), shown[massUnit(unit)], rounding);
