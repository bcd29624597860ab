import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { atMostOneLogGrown, listeria70For2, type CriticalLimit, type LethalityLimit } from '@larderbook/haccp';
import { v7 } from 'uuid';

/** Six logs of Listeria beside the printed row, as an invented process authority supports it. */
const killed: LethalityLimit = {
  kind: 'lethality',
  set: listeria70For2,
  log10: 600,
  floor: { '°F': 14_000, '°C': 6000 },
  authority: 'Process authority’s letter of 4 May, folder 3 (invented)',
  longestGapSeconds: 15 * 60,
  source: listeria70For2.source,
};

/** The cook is also judged by what it killed, and the chill by what grew in it. */
export const withProcessLetter = (plan: PlanContent): PlanContent => ({
  ...plan,
  controlPoints: plan.controlPoints
    .map((point) => alsoBy(killed, point, 'dwell'))
    .map((point) => alsoBy({ ...atMostOneLogGrown, species: 'pork' }, point, 'cooling')),
});

/** One limit more where there is one of this kind. */
function alsoBy(limit: CriticalLimit, point: ControlPoint, beside: CriticalLimit['kind']): ControlPoint {
  if (!point.limits.some((each) => each.limit.kind === beside)) return point;
  return { ...point, limits: [...point.limits, { limitId: v7(), limit }] };
}
