import { governing } from '../../explain/governing';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainWeightLoss } from './explain-weight-loss';
import type { WeightLossLimit } from './weight-loss-limit';

export const weightLossExplainer: Explainer<WeightLossLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series }) => explainWeightLoss(limit, governing(series.weights, verdict)),
};
