import { judgeFigure } from '../formula/judge-figure';
import type { FigureLimit } from '../formula/figure-limit';
import { scaledBig } from '../quantity/decimal';
import type { Verdict } from './verdict';

/** A figure that was analysed or read, in the unit of its limit; in another unit it decides nothing. */
export function judgeFigureRead(read: { value: number; unit: string } | undefined, limit: FigureLimit): Verdict {
  const thousandths = read?.unit === limit.unit ? scaledBig(read.value, 3) : undefined;
  return judgeFigure(thousandths === undefined ? undefined : { numerator: thousandths, denominator: 1000n }, limit);
}
