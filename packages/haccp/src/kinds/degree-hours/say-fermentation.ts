import { decimalText } from '../../quantity/decimal';
import { formatDegrees } from '../../quantity/degrees';
import type { FermentationLimit } from './fermentation-limit';

/** "≤ 1200 °F·h below 90 °F, ≤ 1000 °F·h up to 100 °F, ≤ 900 °F·h above it, counted over 60 °F until pH 5.3" */
export function sayDegreeHours({ base, pH, classes }: FermentationLimit): string {
  const said = classes.map(({ top, isTopIncluded, most }) => {
    const reach = top ? `${isTopIncluded ? 'up to' : 'below'} ${formatDegrees(top)}` : 'above it';
    return `≤ ${most} ${base.unit}·h${classes.length === 1 ? '' : ` ${reach}`}`;
  });
  return `${said.join(', ')}, counted over ${formatDegrees(base)} until pH ${decimalText(pH.thousandths, 3)}`;
}
