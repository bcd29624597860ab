import { decimalText, scaledBig } from './decimal';
import { divide, type Rounding } from './divide';
import type { EnteredMass, MassUnit } from './mass';
import type { Quantity } from './quantity';

/** Femtograms (10⁻¹⁵ g) in a thousandth of each unit: exact, since 1 lb is 453.59237 g and 1 oz is 28.349523125 g. */
const FEMTOGRAMS_PER_THOUSANDTH: Record<MassUnit, bigint> = {
  g: 1_000_000_000_000n,
  kg: 1_000_000_000_000_000n,
  oz: 28_349_523_125_000n,
  lb: 453_592_370_000_000n,
};
const GRAM_PLACES = 15;

/** Exact femtograms. Throws a RangeError on more than three decimals. */
export function massOf({ value, unit }: EnteredMass): bigint {
  const thousandths = scaledBig(value, 3);
  if (thousandths === undefined) throw new RangeError(`${value} is not a weight with at most three decimals`);
  return thousandths * FEMTOGRAMS_PER_THOUSANDTH[unit];
}

/** For reading, rounded once: 2.5 g, 22.046 lb. */
export function roundedMass(
  femtograms: bigint,
  unit: MassUnit,
  decimals = 3,
  rounding: Rounding = 'nearest',
): Quantity & { unit: MassUnit } {
  const step = FEMTOGRAMS_PER_THOUSANDTH[unit] * 1000n;
  return { value: decimalText(divide(femtograms * 10n ** BigInt(decimals), step, rounding), decimals), unit };
}

export function formatMass(femtograms: bigint, unit: MassUnit, decimals = 3, rounding: Rounding = 'nearest'): string {
  return `${roundedMass(femtograms, unit, decimals, rounding).value} ${unit}`;
}

const HEAVY: Record<'US' | 'metric', [unit: MassUnit, grams: number]> = { US: ['lb', 453.59237], metric: ['kg', 1000] };

/** 22.68 kg or 50 lb; below a pound or a kilo in grams. */
export function massIn(units: 'US' | 'metric', grams: number, rounding: Rounding = 'nearest'): Quantity & { unit: MassUnit } {
  const [unit, least] = HEAVY[units];
  const mass = massFromGrams(grams.toFixed(9));
  return Math.abs(grams) >= least ? roundedMass(mass, unit, 2, rounding) : roundedMass(mass, 'g', 1, rounding);
}

/** Every digit, for the database: "453.59237". */
export const gramsText = (femtograms: bigint): string => decimalText(femtograms, GRAM_PLACES);

/** Text as the database gives it back. */
export function massFromGrams(text: string): bigint {
  const match = /^(-?)(\d+)(?:\.(\d*))?$/.exec(text.trim());
  const fraction = (match?.[3] ?? '').replace(/0+$/, '');
  if (!match || fraction.length > GRAM_PLACES) throw new RangeError(`"${text}" is not a decimal number of grams`);
  const digits = BigInt(match[2] + fraction.padEnd(GRAM_PLACES, '0'));
  return match[1] ? -digits : digits;
}
