import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainFigure } from './explain-figure';
import type { FigureLimit } from './figure-limit';

export const figureExplainer: Explainer<FigureLimit> = {
  ...undrawn,
  explain: (limit, _verdict, { alone, errors }) =>
    explainFigure(
      limit,
      alone.map(({ id, at, probe, read }) => ({ id, at, probe, read })),
      errors,
    ),
};
