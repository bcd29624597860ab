import { governing } from '../../explain/governing';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainGrowthLimit } from './explain-growth-limit';
import type { GrowthLimit } from './growth-limit';

export const growthExplainer: Explainer<GrowthLimit> = {
  ...undrawn,
  explain: (limit, told, { series, context }) => explainGrowthLimit(limit, told, governing(series.temperatures, told), context),
};
