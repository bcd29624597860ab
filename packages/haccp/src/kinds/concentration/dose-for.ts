import { divide } from '../../quantity/divide';
import { partsPerMillion } from '../../quantity/percent';
import { countedShare, isCountable } from './counted-as';
import type { ConcentrationLimit } from './concentration-limit';

/** Femtograms of an ingredient: the least that reaches the minimum and the most that stays within the maximum. */
export type Dose = { least?: bigint; most?: bigint };

/** Femtograms the weighing of the ingredient, and the meat block, may be wrong by, either way. */
export type WeighedWithin = { ingredient?: bigint; meat?: bigint };

/**
 * How much of an ingredient a meat block takes: ppm × meat ÷ content. Rounded inward, to the femtogram. Undefined when
 * the meat weighs less than nothing, the ingredient holds none of the substance, its content is not a percentage with
 * at most four decimals, or the limit's figures are no whole numbers. What the scales may be wrong by is allowed for:
 * whatever is shown between least and most is surely within the limit.
 */
export function doseFor(
  limit: ConcentrationLimit,
  meatBlock: bigint,
  percent: number,
  { ingredient = 0n, meat = 0n }: WeighedWithin = {},
): Dose | undefined {
  const parts = partsPerMillion(percent);
  if (!parts || meatBlock < 0n || !isCountable(limit) || !isWhole(limit)) return undefined;
  const { numerator, denominator } = countedShare(limit);
  const perThousandth = BigInt(parts) * 1000n * numerator;
  const dose = (thousandths: bigint, meatWeight: bigint, rounding: 'up' | 'down') =>
    divide(thousandths * meatWeight * denominator, perThousandth, rounding);
  const most = mostThousandths(limit);
  return {
    least: limit.min === undefined ? undefined : dose(BigInt(limit.min) * 10n, meatBlock + meat, 'up') + ingredient,
    most: most === undefined ? undefined : dose(most, meatBlock - meat, 'down') - ingredient,
  };
}

const isWhole = ({ min = 0, max = 0, maxThousandths = 0 }: ConcentrationLimit): boolean =>
  [min, max, maxThousandths].every((figure) => Number.isSafeInteger(figure) && figure >= 0);

/** The maximum in thousandths of a ppm: the exact one where the limit carries it. */
export function mostThousandths({ max, maxThousandths }: ConcentrationLimit): bigint | undefined {
  if (maxThousandths !== undefined) return BigInt(maxThousandths);
  return max === undefined ? undefined : BigInt(max) * 10n;
}
