import type { PlanContent } from '@larderbook/contracts';
import { limitSets, newerEditionOf, setInUse, type CriticalLimit, type LimitSet, type WhereItWorks } from '@larderbook/haccp';
import { builtOn, sayEdition } from './built-on';
import { pointsElsewhere } from './figures-from-elsewhere';
import { otherwise } from './otherwise';
import type { Reasons } from './reasons-in';

export type AskedFor = { now: Date; where: WhereItWorks };
type Compared = { today: string; inUse: LimitSet | undefined };

/** The plan and its lots stay as they are: 9 CFR 417.4(a)(3) asks for a reassessment, not for a change. */
export function reassessments({ controlPoints }: PlanContent, { now, where }: AskedFor, reasons: Reasons): string[] {
  const compared = { today: now.toISOString().slice(0, 10), inUse: setInUse(where) };
  const found = controlPoints.flatMap(({ name, limits }) => limits.flatMap(({ limit }) => reasonsFor(name, limit, compared, reasons)));
  return [...found, ...notRead(controlPoints, compared.inUse, reasons)];
}

function reasonsFor(point: string, limit: CriticalLimit, { today, inUse }: Compared, reasons: Reasons): string[] {
  const built = builtOn(limit, inUse);
  if (!built) return []; // a figure of one's own has its own support
  const isOther = inUse !== undefined && built.set !== inUse;
  const beside = isOther ? inUse : newerEditionOf(limitSets, { setId: built.set.id, today });
  const match = beside?.rows.find(({ id }) => id === built.row.id);
  const named = (set: LimitSet) => sayEdition(set, set === inUse, reasons);
  const says = beside && match && otherwise(built.row, match, named(beside), reasons);
  return says ? [reasons.say('reassess', { point, built: named(built.set), otherwise: says })] : [];
}

/** An edition read in part may print the other figures otherwise. */
function notRead(points: PlanContent['controlPoints'], inUse: LimitSet | undefined, reasons: Reasons): string[] {
  const silent = inUse?.isPartial ? pointsElsewhere(points, inUse) : [];
  if (!inUse || silent.length === 0) return [];
  return [reasons.say('not-read', { points: silent.join(', '), edition: sayEdition(inUse, true, reasons) })];
}
