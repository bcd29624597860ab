import type { PlanContent } from '@larderbook/contracts';
import { setInUse, type CriticalLimit, type LimitSet, type WhereItWorks } from '@larderbook/haccp';
import { builtOn, sayEdition } from './built-on';
import type { Reasons } from './reasons-in';

/**
 * No row in the set in use is no reason to reassess; the figure stands on its own support. A set read in part does not
 * show what it lacks.
 */
export function figuresFromElsewhere({ controlPoints }: PlanContent, where: WhereItWorks, reasons: Reasons): string[] {
  const inUse = setInUse(where);
  if (!inUse || inUse.isPartial) return [];
  const points = pointsElsewhere(controlPoints, inUse);
  if (points.length === 0) return [];
  return [reasons.say('elsewhere', { points: points.join(', '), edition: sayEdition(inUse, true, reasons) })];
}

export const pointsElsewhere = (points: PlanContent['controlPoints'], inUse: LimitSet): string[] => [
  ...new Set(points.filter(({ limits }) => limits.some(({ limit }) => isElsewhere(limit, inUse))).map(({ name }) => name)),
];

function isElsewhere(limit: CriticalLimit, inUse: LimitSet): boolean {
  const built = builtOn(limit, inUse);
  return built !== undefined && !inUse.rows.some(({ id }) => id === built.row.id);
}
