import type { Verdict } from '../limits/verdict';
import { scaled } from '../quantity/decimal';
import { amountOf, differenceOf } from '../quantity/quantities';
import type { QuantityUnit } from '../quantity/quantity';

/** In the instrument's own unit, at most three decimals. */
export type Check = { expected: number; observed: number; tolerance: number; unit: QuantityUnit };

/** Compared in thousandths, without rounding. */
export function judgeCheck({ expected, observed, tolerance, unit }: Check): Verdict {
  const [should, shown, allowed] = [expected, observed, tolerance].map((value) => scaled(value, 3));
  if (should === undefined || shown === undefined || allowed === undefined) {
    return { kind: 'undetermined', finding: 'check-not-comparable', figures: {}, notes: [] };
  }
  const off = shown - should;
  const spare = allowed - Math.abs(off);
  const figures = {
    ...{ shown: amountOf(shown, unit), expected: amountOf(should, unit) },
    ...{ off: differenceOf(off, unit), allowed: differenceOf(allowed, unit) },
    ...(spare < 0 && { beyond: differenceOf(spare, unit) }),
  };
  const finding = off === 0 ? 'check-true' : off > 0 ? 'check-high' : 'check-low';
  return { kind: spare < 0 ? 'missed' : 'met', finding, measure: 'check', figures, spare, notes: [] };
}
