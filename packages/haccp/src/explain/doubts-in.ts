import { speedOf, usableContext, type CurveContext } from '../limits/curve-context';
import type { Series } from '../limits/series';
import { clockFindings } from '../thermal/clock-findings';
import { examineCurve } from '../thermal/examine-curve';
import { isDoubted } from '../thermal/finding';
import { tellFinding, type ToldFinding } from './tell-finding';

/** What a person may still settle by saying what the readings were; of pH and weights only clocks. */
export function doubtsIn({ temperatures, acid, weights }: Series, context: CurveContext): ToldFinding[] {
  const { now } = usableContext(context);
  const examined = examineCurve(temperatures, undefined, { speed: speedOf(context), now });
  const found = 'fault' in examined ? [] : examined.findings;
  return [...found, ...clockFindings(acid, now), ...clockFindings(weights, now)].filter(isDoubted).map(tellFinding);
}
