import { decimalText } from '../quantity/decimal';
import { divide, type Rounding } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';

/** Parts per million as an exact fraction. */
export type Ppm = { numerator: bigint; denominator: bigint };

const MILLION = 1_000_000n;

/** Comminuted or dry-cured: substance × 10⁶ ÷ green weight of the meat. Femtograms both. */
export const ingoingPpm = (substance: bigint, greenMeat: bigint): Ppm => over(substance * MILLION, greenMeat);

/**
 * Pumped or massaged: substance × pump × 10⁶ ÷ pickle (FSIS Directive 7620.3, p. 19, as quoted by later authors).
 * @param pumpPercent pickle taken up, as percent of the green weight
 */
export const pumpedPpm = (substance: bigint, pickle: bigint, pumpPercent: number): Ppm =>
  over(substance * partsOf(pumpPercent), pickle);

/**
 * Immersed until even: meat and cover pickle as one, substance × 10⁶ ÷ (meat + pickle) (Directive 7620.3, method 2).
 */
export const immersedPpm = (substance: bigint, greenMeat: bigint, pickle: bigint): Ppm =>
  over(substance * MILLION, greenMeat + pickle);

/** The femtograms of substance a pickle takes to give `ppm` after pumping, rounded down. */
export const substanceForPickle = (ppm: number, pickle: bigint, pumpPercent: number): bigint =>
  divide(BigInt(ppm) * pickle, partsOf(pumpPercent), 'down');

/** The femtograms of substance in a mix that holds `percent` of it, rounded up. */
export const substanceIn = (mix: bigint, percent: number): bigint => divide(mix * partsOf(percent), MILLION, 'up');

/** Potassium nitrite with the nitrite of so much sodium nitrite: × 85.10 ÷ 69.00, their molar masses in g/mol. */
export const potassiumNitriteFor = (sodiumNitritePpm: number): Ppm => over(BigInt(sodiumNitritePpm) * 8510n, 6900n);

/** "162.27 ppm" */
export const sayIngoing = ({ numerator, denominator }: Ppm, decimals = 2, rounding: Rounding = 'nearest'): string =>
  `${decimalText(divide(numerator * 10n ** BigInt(decimals), denominator, rounding), decimals)} ppm`;

function over(numerator: bigint, denominator: bigint): Ppm {
  if (denominator <= 0n) throw new RangeError('A concentration needs a weight to refer to');
  return { numerator, denominator };
}

function partsOf(percent: number): bigint {
  const parts = partsPerMillion(percent);
  if (!parts)
    throw new RangeError(`${percent} % cannot be used; it must be above 0 and at most 100 with four decimals`);
  return BigInt(parts);
}
