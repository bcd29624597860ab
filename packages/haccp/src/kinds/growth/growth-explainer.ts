import { governing } from '../../explain/governing';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainGrowthLimit } from './explain-growth-limit';
import type { GrowthLimit } from './growth-limit';

export const growthExplainer: Explainer<GrowthLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context }) => explainGrowthLimit(limit, governing(series.temperatures, verdict), context),
};
