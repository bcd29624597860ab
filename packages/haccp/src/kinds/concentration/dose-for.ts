import { divide } from '../../quantity/divide';
import { partsPerMillion } from '../../quantity/percent';
import { countedShare, isCountable } from './counted-as';
import type { ConcentrationLimit } from './concentration-limit';

/** Femtograms: the least for the minimum, the most for the maximum. */
export type Dose = { least?: bigint; most?: bigint };

/** Errors either way, in femtograms. */
export type WeighedWithin = { ingredient?: bigint; meat?: bigint };

/**
 * ppm × meat ÷ content, rounded inward to the femtogram. Undefined for a negative meat block, no content or one that is
 * no percentage with four decimals, or limit figures that are no whole numbers. Within the errors of the scales, any
 * figure between least and most is surely within the limit.
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

/** Thousandths of a ppm: the exact maximum where the limit carries it. */
export function mostThousandths({ max, maxThousandths }: ConcentrationLimit): bigint | undefined {
  if (maxThousandths !== undefined) return BigInt(maxThousandths);
  return max === undefined ? undefined : BigInt(max) * 10n;
}
