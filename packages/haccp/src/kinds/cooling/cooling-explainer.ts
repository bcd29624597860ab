import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { coded } from '../../limits/coded';
import { printedIn, timeOf } from '../../quantity/quantities';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { coolingCrossings } from './cooling-crossings';
import type { CoolingLimit } from './cooling-limit';
import { coolingOf } from './cooling-of';
import { explainCooling } from './explain-cooling';
import { stageOf } from './stage-of';

export const coolingExplainer: Explainer<CoolingLimit> = {
  ...undrawn,
  explain: (limit, verdict, { series, context }) => explainCooling(limit, governing(series.temperatures, verdict), context),
  lines: ({ stages }, unit) =>
    stages.flatMap(({ from, to, withinSeconds }, index) => [
      ...(index === 0 && from ? [lineAt(from, unit, printedIn(from, unit))] : []),
      lineAt(to, unit, coded('line-within', { figure: printedIn(to, unit), time: timeOf(withinSeconds * 1000) })),
    ]),
  crossings: coolingCrossings,
  stretches: (limit, { readings, unit, context }) =>
    (coolingOf(readings, limit, context)?.spans ?? []).flatMap(({ from, to, startAt, endAt, deadline, verdict }) => {
      if (startAt === undefined) return [];
      const kind = verdict === 'undetermined' && !context.ended ? 'running' : verdict;
      return [{ label: stageOf(from, to, unit), startAt, endAt, deadline, kind }];
    }),
};
