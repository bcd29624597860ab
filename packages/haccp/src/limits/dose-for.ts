import { divide } from '../quantity/divide';
import { partsPerMillion } from '../quantity/percent';
import type { ConcentrationLimit } from './limit';

/** Femtograms of an ingredient: the least that reaches the minimum and the most that stays within the maximum. */
export type Dose = { least?: bigint; most?: bigint };

/**
 * How much of an ingredient a meat block takes: ppm × meat ÷ content. Rounded inward, to the femtogram.
 * Undefined when the ingredient holds none of the substance or its content is not a percentage with at most four
 * decimals.
 */
export function doseFor(limit: ConcentrationLimit, meatBlock: bigint, percent: number): Dose | undefined {
  const parts = partsPerMillion(percent);
  if (!parts) return undefined;
  const perThousandth = BigInt(parts) * 1000n;
  const most = mostThousandths(limit);
  return {
    least: limit.min === undefined ? undefined : divide(BigInt(limit.min) * 10n * meatBlock, perThousandth, 'up'),
    most: most === undefined ? undefined : divide(most * meatBlock, perThousandth, 'down'),
  };
}

/** The maximum in thousandths of a ppm: the exact one where the limit carries it. */
export function mostThousandths({ max, maxThousandths }: ConcentrationLimit): bigint | undefined {
  if (maxThousandths !== undefined) return BigInt(maxThousandths);
  return max === undefined ? undefined : BigInt(max) * 10n;
}
