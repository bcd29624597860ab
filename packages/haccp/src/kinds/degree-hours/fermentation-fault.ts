import type { LimitFault } from '../../limits/limit-fault-code';
import { onCommonScale } from '../../quantity/convert-degrees';
import { isPossible } from '../../thermal/curve';
import type { FermentationLimit } from './fermentation-limit';

export function fermentationFault({ base, pH, classes, longestGapSeconds }: FermentationLimit): LimitFault | undefined {
  const tops = classes.map(({ top }) => (top ? onCommonScale(top) : Infinity));
  const isRising = tops.every((top, index) => index === 0 || top > (tops[index - 1] as number));
  const isCounted = classes.every(({ most }) => Number.isSafeInteger(most) && most > 0);
  if (!isPossible(base) || !Number.isSafeInteger(pH.thousandths)) return { code: 'degree-hours-base-unusable' };
  if (!isRising || tops[tops.length - 1] !== Infinity) return { code: 'degree-hours-classes-unusable' };
  if (!isCounted) return { code: 'degree-hours-unusable' };
  return longestGapSeconds > 0 ? undefined : { code: 'gap-unusable' };
}
