import { massFromGrams, massOf, roundedMass, type EnteredMass, type MassUnit, type Quantity, type Rounding } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';

export type ShownUnits = 'US' | 'metric';

/** Grams in each unit, only to say what is usual; weights themselves are converted exactly. */
const grams: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const decimals: Record<MassUnit, number> = { g: 2, kg: 3, oz: 2, lb: 3 };

const all = Object.keys(grams) as MassUnit[];

/** The unit that suits the weight comes first. */
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

export const femtogramsIn = ({ value, unit }: { value: number; unit: string }): bigint | undefined => {
  const known = all.find((each) => each === unit);
  return known && massOf({ value, unit: known });
};

/** Three significant figures, so that a person can read the bound. */
const upTo = (most: number): number => Number(most.toPrecision(3));

export const enteredMass = (value: number, unit: string): EnteredMass => ({ value, unit: massUnit(unit) });

function massUnit(unit: string): MassUnit {
  const known = all.find((each) => each === unit);
  if (!known) throw new RangeError(`${unit} is not a unit of a weight`);
  return known;
}

export const isMoreThan = (weight: EnteredMass, limitGrams: number): boolean => massOf(weight) > massFromGrams(limitGrams.toFixed(9));

/** The keypad opens in the first unit. */
export const beginningWith = (unit: string, choices: UnitChoice[]): UnitChoice[] =>
  [...choices].sort((one, other) => Number(other.unit === unit) - Number(one.unit === unit));

/** Pounds or kilograms from one on, grams below. */
export const unitFor = (weightGrams: number, units: ShownUnits): MassUnit => {
  const heavy = units === 'US' ? 'lb' : 'kg';
  return weightGrams >= grams[heavy] ? heavy : 'g';
};

const shown: Record<MassUnit, number> = { g: 1, kg: 3, oz: 2, lb: 3 };

export const inUnit = (weightGrams: number, unit: string, rounding: Rounding = 'nearest'): Quantity =>
  roundedMass(massFromGrams(weightGrams.toFixed(9)), massUnit(unit), shown[massUnit(unit)], rounding);
