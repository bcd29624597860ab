import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { sayPrinted } from '../../quantity/bound';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainLethalityLimit } from './explain-lethality-limit';
import type { LethalityLimit } from './lethality-limit';

export const lethalityExplainer: Explainer<LethalityLimit> = {
  ...undrawn,
  explain: (limit, told, { series, context, say }) =>
    explainLethalityLimit(limit, told, governing(series.temperatures, told), context, say),
  lines: ({ floor }, unit) => [lineAt(floor, unit, `counted from ${sayPrinted(floor, unit)}`)],
  lawsOfKill: ({ set }) => [set],
};
