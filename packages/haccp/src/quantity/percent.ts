import { decimalText, scaled } from './decimal';

/** A percentage with at most four decimals as exact parts per million: 6.25 % is 62500. Undefined outside 0–100 %. */
export function partsPerMillion(percent: number): number | undefined {
  const parts = scaled(percent, 4);
  return parts !== undefined && parts >= 0 && parts <= 1_000_000 ? parts : undefined;
}

/** "6.25 %"; a number that is no percentage stands as it is. */
export const formatPercent = (percent: number): string => {
  const parts = scaled(percent, 4);
  return `${parts === undefined ? percent : decimalText(parts, 4)} %`;
};
