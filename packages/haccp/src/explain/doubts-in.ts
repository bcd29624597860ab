import { speedOf, usableContext, type CurveContext } from '../limits/curve-context';
import type { Series } from '../limits/series';
import { clockFindings } from '../thermal/clock-findings';
import { examineCurve } from '../thermal/examine-curve';
import { isDoubted } from '../thermal/finding';
import { tellFinding, type ToldFinding } from './tell-finding';

/**
 * What may keep a series from being met until a person says what the readings were. Of pH and weights only the clocks
 * show it.
 */
export function doubtsIn({ temperatures, acid, weights }: Series, context: CurveContext): ToldFinding[] {
  const { now } = usableContext(context);
  const examined = examineCurve(temperatures, undefined, { speed: speedOf(context), now });
  const found = 'fault' in examined ? [] : examined.findings;
  return [...found, ...clockFindings(acid, now), ...clockFindings(weights, now)].filter(isDoubted).map(tellFinding);
}
