import { lineAt } from '../../explain/line';
import { measurementOf } from '../../limits/measurement';
import { sayPrinted } from '../../quantity/bound';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainRange } from './explain-range';
import type { RangeLimit } from './range-limit';

export const rangeExplainer: Explainer<RangeLimit> = {
  ...undrawn,
  explain: (limit, _told, { alone, errors, tell }) =>
    explainRange(
      limit,
      alone.map(({ id, at, probe, read }) => ({ id, at, probe, measurement: read && measurementOf(read) })),
      tell,
      errors,
    ),
  lines: ({ min, max }, unit) => [
    ...(typeof min === 'object' ? [lineAt(min, unit, `≥ ${sayPrinted(min, unit)}`)] : []),
    ...(typeof max === 'object' ? [lineAt(max, unit, `≤ ${sayPrinted(max, unit)}`)] : []),
  ],
};
