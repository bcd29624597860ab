import type { Ratio } from './curing-species';
import { faultOf, type OrFault } from './fault';

/**
 * `strong` is isolated soy protein and sodium caseinate, of which 2 % count as 3.5 % of the others (9 CFR 319.140 and
 * 424.21(c)).
 */
export type Binder = { mass: bigint; strength: 'usual' | 'strong' };

/** 3.5 ÷ 2 = 1.75, kept as quarters. */
const QUARTERS = { usual: 4n, strong: 7n } as const;

/** Percent of the finished weight, as usual binders. */
export function binderPercent(binders: readonly Binder[], finished: bigint): OrFault<Ratio> {
  if (finished <= 0n) return faultOf('product-weighs-nothing');
  if (binders.some(({ mass }) => mass < 0n)) return faultOf('binder-below-nothing');
  const quarters = binders.reduce((sum, { mass, strength }) => sum + mass * QUARTERS[strength], 0n);
  return { numerator: quarters * 100n, denominator: finished * 4n };
}
