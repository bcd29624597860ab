import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { sayPrinted } from '../../quantity/bound';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { explainDegreeHours } from './explain-degree-hours';
import type { DegreeHoursLimit } from './fermentation-limit';

export const degreeHoursExplainer: Explainer<DegreeHoursLimit> = {
  ...undrawn,
  explain: (limit, told, { series, context, say }) =>
    explainDegreeHours(limit, told, governing(series.temperatures, told), series.acid, context, say),
  lines({ base }, unit) {
    const printed = { [base.unit]: base.hundredths };
    return [lineAt(printed, unit, `counted over ${sayPrinted(printed, unit)}`)];
  },
};
