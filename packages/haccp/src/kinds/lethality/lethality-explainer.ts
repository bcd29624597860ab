import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { coded } from '../../limits/coded';
import { printedIn } from '../../quantity/quantities';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainLethalityLimit } from './explain-lethality-limit';
import type { LethalityLimit } from './lethality-limit';

export const lethalityExplainer: Explainer<LethalityLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context }) => explainLethalityLimit(limit, governing(series.temperatures, verdict), context),
  lines: ({ floor }, unit) => [lineAt(floor, unit, coded('counted-from-figure', { figure: printedIn(floor, unit) }))],
  lawsOfKill: ({ set }) => [set],
};
