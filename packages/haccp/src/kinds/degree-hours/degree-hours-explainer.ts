import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { sayPrinted } from '../../quantity/bound';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainDegreeHours } from './explain-degree-hours';
import type { DegreeHoursLimit } from './fermentation-limit';

export const degreeHoursExplainer: Explainer<DegreeHoursLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context, say }) =>
    explainDegreeHours(limit, verdict, governing(series.temperatures, verdict), series.acid, context, say),
  lines({ base }, unit) {
    const printed = { [base.unit]: base.hundredths };
    return [lineAt(printed, unit, `counted over ${sayPrinted(printed, unit)}`)];
  },
};
