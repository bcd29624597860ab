import { scaled } from '../quantity/decimal';

/** One line of a formula: an ingredient as percent of the meat block, with at most four decimals. */
export type FormulaLine = { name: string; percent: number };

/** What is wrong with one line, by its index, in a sentence that names it. */
export type FormulaFault = { line: number; because: string };

/** A dish may hold far more stock than meat; above this a decimal point has slipped. */
const MOST_PERCENT = 1000;

/** Everything that is wrong with a formula's lines; empty when it can be used. */
export function faultsOf(lines: readonly FormulaLine[]): FormulaFault[] {
  return lines.flatMap((line, index) => {
    const because = faultOf(line, lines.slice(0, index));
    return because ? [{ line: index, because }] : [];
  });
}

/** Ten-thousandths of a percent, exactly; undefined for a percentage that cannot be used. */
export function percentParts(percent: number): bigint | undefined {
  const parts = scaled(percent, 4);
  return parts !== undefined && parts > 0 && percent <= MOST_PERCENT ? BigInt(parts) : undefined;
}

function faultOf({ name, percent }: FormulaLine, earlier: readonly FormulaLine[]): string | undefined {
  const called = name.trim();
  if (!called) return 'An ingredient has no name.';
  if (earlier.some((other) => other.name.trim().toLowerCase() === called.toLowerCase()))
    return `${called} is listed twice.`;
  if (!Number.isFinite(percent)) return `${called} has no percentage.`;
  if (percent <= 0) return `${called} has ${percent} %; it must be above 0 %.`;
  if (percent > MOST_PERCENT)
    return `${called} has ${percent} % of the meat block; at most ${MOST_PERCENT} % can be meant.`;
  if (percentParts(percent) === undefined) return `${called} has ${percent} %; at most four decimals are kept.`;
  return undefined;
}
