import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainFreezing } from './explain-freezing';
import type { FreezingLimit } from './freezing-limit';

export const freezingExplainer: Explainer<FreezingLimit> = {
  ...undrawn,
  explain: (limit, _verdict, { series, context }) => explainFreezing(limit, series, context),
};
