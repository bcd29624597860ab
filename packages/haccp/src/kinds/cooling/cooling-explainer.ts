import { governing } from '../../explain/governing';
import { lineAt } from '../../explain/line';
import { sayPrinted } from '../../quantity/bound';
import { sayDuration } from '../../quantity/duration';
import { sayFromTo } from '../../quantity/say-from-to';
import { prepareCurve } from '../../thermal/curve';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import { coolingCrossings } from './cooling-crossings';
import type { CoolingLimit } from './cooling-limit';
import { explainCooling } from './explain-cooling';
import { stageSpans } from './stage-spans';

export const coolingExplainer: Explainer<CoolingLimit> = {
  ...undrawn,
  explain: (limit, told, { series, context, say }) => explainCooling(limit, told, governing(series.temperatures, told), context, say),
  lines: ({ stages }, unit) =>
    stages.flatMap(({ from, to, withinSeconds }, index) => [
      ...(index === 0 && from ? [lineAt(from, unit, sayPrinted(from, unit))] : []),
      lineAt(to, unit, `${sayPrinted(to, unit)} within ${sayDuration(withinSeconds * 1000)}`),
    ]),
  crossings: coolingCrossings,
  stretches: (limit, { readings, unit, context }) =>
    stageSpans(prepareCurve(readings), limit, context).flatMap(({ from, to, startAt, endAt, deadline, verdict }) => {
      if (startAt === undefined) return [];
      const kind = verdict === 'undetermined' && !context.ended ? 'running' : verdict;
      return [{ label: sayFromTo(from, to, unit), startAt, endAt, deadline, kind }];
    }),
};
