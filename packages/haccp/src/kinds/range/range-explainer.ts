import { lineAt } from '../../explain/line';
import { sum } from '../../limits/line-part';
import { printedIn } from '../../quantity/quantities';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainRange } from './explain-range';
import type { RangeLimit } from './range-limit';
import { readFor } from './read-for';

export const rangeExplainer: Explainer<RangeLimit> = {
  ...undrawn,
  explain: (limit, _verdict, { alone, errors }) =>
    explainRange(
      limit,
      alone.map(({ id, at, probe, read }) => ({ id, at, probe, measurement: readFor(read, limit) })),
      errors,
    ),
  lines: ({ min, max }, unit) => [
    ...(typeof min === 'object' ? [lineAt(min, unit, sum`≥ ${printedIn(min, unit)}`)] : []),
    ...(typeof max === 'object' ? [lineAt(max, unit, sum`≤ ${printedIn(max, unit)}`)] : []),
  ],
};
