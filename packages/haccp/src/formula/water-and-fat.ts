import { divide } from '../quantity/divide';
import { scaled } from '../quantity/decimal';
import type { Ratio } from './curing-species';
import { asGiven } from '../quantity/quantities';
import { faultOf, isFault, type Fault, type OrFault } from './fault';

/** Percent, at most three decimals. */
export type Analysis = { moisture: number; protein: number; fat: number };

const PROTEIN_TIMES = 4n;

/** Percent: moisture − 4 × protein, never below zero (the definition also stands in Michigan Food Law 289.7113(b)). */
export function addedWater(analysis: Pick<Analysis, 'moisture' | 'protein'>): OrFault<Ratio> {
  const [moisture, protein] = [analysed(analysis.moisture), analysed(analysis.protein)];
  if (isFault(moisture)) return moisture;
  if (isFault(protein)) return protein;
  const added = moisture.numerator - PROTEIN_TIMES * protein.numerator;
  return { numerator: added > 0n ? added : 0n, denominator: 1000n };
}

/** In percent; frankfurters are limited by this sum. */
export function fatAndAddedWater(analysis: Analysis): OrFault<Ratio> {
  const [fat, added] = [analysed(analysis.fat), addedWater(analysis)];
  if (isFault(added)) return added;
  return isFault(fat) ? fat : { numerator: added.numerator + fat.numerator, denominator: 1000n };
}

export function analysed(percent: number): OrFault<Ratio> {
  const parts = percentThousandths(percent);
  return parts === undefined ? faultOf('analysis-unusable', { percent: asGiven(percent, '%') }) : { numerator: parts, denominator: 1000n };
}

/**
 * Water is included in the ingredients: others × percent ÷ (100 − percent), rounded down. 102 lb of others take 3.154…
 * lb at 3 %.
 */
export function mostWaterInAll(others: bigint, percent: number): bigint | Fault {
  const parts = percentThousandths(percent);
  if (parts === undefined || parts >= 100_000n) return faultOf('water-share-unusable', { percent: asGiven(percent, '%') });
  if (others <= 0n) return faultOf('no-other-ingredients');
  return divide(others * parts, 100_000n - parts, 'down');
}

function percentThousandths(percent: number): bigint | undefined {
  const parts = scaled(percent, 3);
  return parts !== undefined && parts >= 0 && parts <= 100_000 ? BigInt(parts) : undefined;
}
