import { decimalText, scaled } from './decimal';

/** At most four decimals: 6.25 % is 62500. Undefined outside 0–100 %. */
export function partsPerMillion(percent: number): number | undefined {
  const parts = scaled(percent, 4);
  return parts !== undefined && parts >= 0 && parts <= 1_000_000 ? parts : undefined;
}

/** A number with more decimals stands as it is. */
export const formatPercent = (percent: number): string => {
  const parts = scaled(percent, 4);
  return `${parts === undefined ? percent : decimalText(parts, 4)} %`;
};
