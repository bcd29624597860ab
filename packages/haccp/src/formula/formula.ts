import { scaled } from '../quantity/decimal';

/** Percent of the meat block, at most four decimals. */
export type FormulaLine = { name: string; percent: number };

/** `line` is its index; the sentence names it. */
export type FormulaFault = { line: number; because: string };

/** A dish may hold far more stock than meat; above this a decimal point has slipped. */
const MOST_PERCENT = 1000;

export function faultsOf(lines: readonly FormulaLine[]): FormulaFault[] {
  const named = new Set<string>();
  const faults: FormulaFault[] = [];
  lines.forEach((line, index) => {
    const name = line.name.trim().toLowerCase();
    const because = faultOf(line, named.has(name));
    if (because) faults.push({ line: index, because });
    named.add(name);
  });
  return faults;
}

/** Exact ten-thousandths of a percent; undefined for an unusable percentage. */
export function percentParts(percent: number): bigint | undefined {
  const parts = scaled(percent, 4);
  return parts !== undefined && parts > 0 && percent <= MOST_PERCENT ? BigInt(parts) : undefined;
}

function faultOf({ name, percent }: FormulaLine, isNamedBefore: boolean): string | undefined {
  const called = name.trim();
  if (!called) return 'An ingredient has no name.';
  if (isNamedBefore) return `${called} is listed twice.`;
  if (!Number.isFinite(percent)) return `${called} has no percentage.`;
  if (percent <= 0) return `${called} has ${percent} %; it must be above 0 %.`;
  if (percent > MOST_PERCENT) return `${called} has ${percent} % of the meat block; at most ${MOST_PERCENT} % can be meant.`;
  if (percentParts(percent) === undefined) return `${called} has ${percent} %; at most four decimals are kept.`;
  return undefined;
}
