import { onCommonScale } from '../../quantity/convert-degrees';
import { isPossible } from '../../thermal/curve';
import type { FermentationLimit } from './fermentation-limit';

/** One sentence on why nothing can be judged against a limit; undefined when it is sound. */
export function fermentationFault({ base, pH, classes, longestGapSeconds }: FermentationLimit): string | undefined {
  const tops = classes.map(({ top }) => (top ? onCommonScale(top) : Infinity));
  const isRising = tops.every((top, index) => index === 0 || top > (tops[index - 1] as number));
  const isCounted = classes.every(({ most }) => Number.isSafeInteger(most) && most > 0);
  if (!isPossible(base) || !Number.isSafeInteger(pH.thousandths)) return 'The base or the pH is no usable number.';
  if (!isRising || tops[tops.length - 1] !== Infinity) return 'The classes do not rise to one without a top.';
  if (!isCounted) return 'A number of degree-hours is no whole number above zero.';
  return longestGapSeconds > 0 ? undefined : 'The longest gap tolerated is no time.';
}
