import { decimalText, scaled } from './decimal';

/** A percentage with at most four decimals as exact parts per million: 6.25 % is 62500. Undefined outside 0–100 %. */
export function partsPerMillion(percent: number): number | undefined {
  const parts = scaled(percent, 4);
  return parts !== undefined && parts >= 0 && parts <= 1_000_000 ? parts : undefined;
}

/** "6.25 %" */
export const sayPercent = (percent: number): string => `${decimalText(scaled(percent, 4) ?? 0, 4)} %`;
