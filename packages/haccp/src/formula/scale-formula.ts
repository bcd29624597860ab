import { divide } from '../quantity/divide';
import { percentParts, type FormulaLine } from './formula';

const PARTS_PER_WHOLE = 1_000_000n;

export type Target<Line extends FormulaLine> = Line & { target: bigint };

/**
 * Trimmed meat × percent ÷ 100, to the femtogram. Throws a RangeError naming the unusable line, or without meat. @param
 * meatBlock femtograms of meat as trimmed, not as bought
 */
export function scaleFormula<Line extends FormulaLine>(lines: readonly Line[], meatBlock: bigint): Target<Line>[] {
  if (meatBlock <= 0n) throw new RangeError('The meat block has no weight');
  return lines.map((line) => {
    const parts = percentParts(line.percent);
    if (parts === undefined) throw new RangeError(`${line.name} has ${line.percent} %, which cannot be scaled`);
    // A spread with a field after it takes ten times as long.
    return Object.assign({}, line, { target: divide(meatBlock * parts, PARTS_PER_WHOLE, 'nearest') });
  });
}
