import type { Coded, Figures, Found, Verdict } from '../../limits/verdict';
import { onCommonScale } from '../../quantity/convert-degrees';
import { divide } from '../../quantity/divide';
import { amountOf, degreesOf, leftOf, timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { Degrees, TemperatureUnit } from '../../quantity/temperature';
import type { Curve } from '../../thermal/curve';
import { degreeHour, type DegreeHours } from './add-up-degree-hours';
import type { FermentationClass, FermentationLimit } from './fermentation-limit';

export type FermentationFinding =
  | 'in-time'
  | 'too-many'
  | 'no-readings'
  | 'never-down'
  | 'running'
  | 'no-start'
  | 'not-covered'
  | 'not-shown';

/** Degree-hours are rounded up, so that they never sound better than they were. */
export function fermentationFound(
  finding: FermentationFinding,
  sum: DegreeHours,
  limit: FermentationLimit,
  allowed: FermentationClass,
  { warmer }: Curve,
): Pick<Verdict, 'spare' | 'running'> & Found {
  const { unit } = limit.base;
  const one = degreeHour(unit);
  const spare = BigInt(allowed.most) * one - sum.most;
  const last = warmer[warmer.length - 1];
  const above = last ? onCommonScale(last.temperature) - onCommonScale(limit.base) : 0;
  const left = above > 0 && spare > 0n ? Number(spare / BigInt(2 * above)) : undefined;
  const pH = amountOf(limit.pH.thousandths, 'pH');
  return {
    finding: `fermentation-${finding}`,
    measure: 'fermentation',
    figures: {
      ...{ most: inDegreeHours(sum.most, unit), allowed: amountOf(allowed.most, `${unit}·h`, 0), pH },
      ...(warmer.length > 0 && { hottest: degreesOf(inUnit(sum.hottest, unit)) }),
      ...(finding === 'too-many' && { sure: inDegreeHours(sum.sure, unit) }),
      ...(sum.gap !== undefined && { gap: timeOf(sum.gap) }),
      ...marginOf(finding, spare, unit),
      ...(finding === 'running' && leftOf(left)),
    },
    spare: Number(spare / one),
    ...(finding === 'running' && { running: { code: 'fermentation', figures: { pH }, deadline: last && left && last.at + left } }),
  };
}

/** In doubt there is no margin; `past` is only what the worst case would be over. */
function marginOf(finding: FermentationFinding, spare: bigint, unit: TemperatureUnit): Figures {
  if (finding === 'too-many') return { over: inDegreeHours(-spare, unit) };
  if (finding === 'in-time') return { spare: inDegreeHours(spare, unit) };
  return finding === 'running' && spare < 0n ? { past: inDegreeHours(-spare, unit) } : {};
}

/** Where less than what counts. For information. */
export const notedStraight = ({ straight, most }: DegreeHours, unit: Degrees['unit']): Coded[] =>
  straight === most ? [] : [{ code: 'fermentation-straight', figures: { straight: inDegreeHours(straight, unit) } }];

const inDegreeHours = (halves: bigint, unit: TemperatureUnit): Quantity =>
  amountOf(divide(halves * 10n, degreeHour(unit), 'up'), `${unit}·h`, 1);

/** For reading only, rounded up to the hundredth. */
const inUnit = (value: number, unit: '°C' | '°F') =>
  unit === '°C' ? { hundredths: Math.ceil(value / 9), unit } : { hundredths: Math.ceil(value / 5) + 3200, unit };
