import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { coded } from '../../limits/coded';
import { printedIn } from '../../quantity/quantities';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainDegreeHours } from './explain-degree-hours';
import type { DegreeHoursLimit } from './fermentation-limit';

export const degreeHoursExplainer: Explainer<DegreeHoursLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context }) =>
    explainDegreeHours(limit, verdict, governing(series.temperatures, verdict), series.acid, context),
  lines({ base }, unit) {
    const printed = { [base.unit]: base.hundredths };
    return [lineAt(printed, unit, coded('counted-over-figure', { figure: printedIn(printed, unit) }))];
  },
};
