import type { CodedAs } from '../limits/coded';
import { scaled } from '../quantity/decimal';
import { asGiven } from '../quantity/quantities';
import type { LineFaultCode } from './fault';

/** Percent of the meat block, at most four decimals. */
export type FormulaLine = { name: string; percent: number };

/** `line` is its index. */
export type FormulaFault = { line: number; because: CodedAs<LineFaultCode> };

/** A dish may hold far more stock than meat; above this a decimal point has slipped. */
const MOST_PERCENT = 1000;

export function faultsOf(lines: readonly FormulaLine[]): FormulaFault[] {
  const named = new Set<string>();
  const faults: FormulaFault[] = [];
  lines.forEach((line, index) => {
    const name = line.name.trim().toLowerCase();
    const because = faultIn(line, named.has(name));
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

function faultIn({ name, percent }: FormulaLine, isNamedBefore: boolean): FormulaFault['because'] | undefined {
  const called = name.trim();
  const of = (code: LineFaultCode) => ({ code, figures: { name: called, percent: asGiven(percent, '%') } });
  if (!called) return { code: 'ingredient-no-name' };
  if (isNamedBefore) return of('ingredient-listed-twice');
  if (!Number.isFinite(percent)) return of('ingredient-no-percentage');
  if (percent <= 0) return of('ingredient-not-above-zero');
  if (percent > MOST_PERCENT) return of('ingredient-too-much');
  return percentParts(percent) === undefined ? of('ingredient-too-fine') : undefined;
}
