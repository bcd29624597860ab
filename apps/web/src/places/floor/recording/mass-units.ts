import { massFromGrams, massOf, type EnteredMass, type MassUnit } from '@larderbook/haccp';
import type { UnitChoice } from '../../../ui/plausible';
import type { ShownUnits } from '../say/say-grams';

/** Grams in each unit, only to say what is usual; weights themselves are converted exactly. */
const grams: Record<MassUnit, number> = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const decimals: Record<MassUnit, number> = { g: 2, kg: 3, oz: 2, lb: 3 };

const all = Object.keys(grams) as MassUnit[];

/** The units of a scale, the one that suits the weight first; usual is anything up to `mostGrams`. */
export function massUnits(units: ShownUnits, mostGrams: number): UnitChoice[] {
  const isHeavy = mostGrams >= 2 * grams[units === 'US' ? 'lb' : 'kg'];
  const suited: Record<ShownUnits, MassUnit[]> = {
    US: isHeavy ? ['lb', 'oz', 'g', 'kg'] : ['g', 'oz', 'lb', 'kg'],
    metric: isHeavy ? ['kg', 'g'] : ['g', 'kg'],
  };
  return suited[units].map((unit) => ({
    unit,
    least: 0,
    most: upTo(mostGrams / grams[unit]),
    decimals: decimals[unit],
  }));
}

/** A weight in grams as near as is needed to say what is usual; nothing where the number is no weight. */
export const gramsIn = ({ value, unit }: { value: number; unit: string }): number | undefined => {
  const known = all.find((each) => each === unit);
  return known && value * grams[known];
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
export const isMoreThan = (weight: EnteredMass, limitGrams: number): boolean =>
  massOf(weight) > massFromGrams(limitGrams.toFixed(9));
