import type { PlanContent } from '@larderbook/contracts';
import {
  limitSets, newerEditionOf, setInUse, type CriticalLimit, type LimitSet, type WhereItWorks,
} from '@larderbook/haccp';
import { otherwise } from './otherwise';
import { printedWhere, type PrintedRow } from './printed-where';

export type AskedFor = { now: Date; where: WhereItWorks };
type Compared = { today: string; inUse: LimitSet | undefined };

/**
 * Why a plan should be looked at again: a figure it was built on stands otherwise in the set the establishment works
 * by, or in a newer edition. The plan itself, and every lot made by it, stay as they are (9 CFR 417.4(a)(3) asks for
 * the reassessment, not for the change).
 */
export function reassessments({ controlPoints }: PlanContent, { now, where }: AskedFor): string[] {
  const compared = { today: now.toISOString().slice(0, 10), inUse: setInUse(where) };
  const limits = controlPoints.flatMap((point) => point.limits.map(({ limit }) => ({ name: point.name, limit })));
  const reasons = limits.flatMap(({ name, limit }) => reasonsFor(name, limit, compared));
  const silent = limits.filter(({ limit }) => isSilentOn(limit, compared.inUse)).map(({ name }) => name);
  return [...reasons, ...(compared.inUse ? saysNothing(compared.inUse, [...new Set(silent)]) : [])];
}

function reasonsFor(name: string, limit: CriticalLimit, { today, inUse }: Compared): string[] {
  const built = builtOn(limit, inUse);
  if (!built) return []; // a figure of one's own, with its own support
  const isOther = inUse !== undefined && built.set !== inUse;
  const beside = isOther ? inUse : newerEditionOf(limitSets, { setId: built.set.id, today });
  const match = beside?.rows.find(({ id }) => id === built.row.id);
  const says = match && otherwise(built.row, match);
  if (!says || !beside) return [];
  const [here, there] = [built.set, beside].map((set) => `${named(set)}${set === inUse ? ', in use here' : ''}`);
  return [`${name}: built on ${here}; ${there}, ${says}. Reassess the plan.`];
}

/** Of the sets that print a figure the one in use, else one of its jurisdiction, else any. */
function builtOn(limit: CriticalLimit, inUse: LimitSet | undefined): PrintedRow | undefined {
  const printed = printedWhere(limit);
  const own = printed.find(({ set }) => set === inUse);
  return own ?? printed.find(({ set }) => set.jurisdiction === inUse?.jurisdiction) ?? printed[0];
}

/** The figure is from another set, and the one in use has none on the matter. */
function isSilentOn(limit: CriticalLimit, inUse: LimitSet | undefined): boolean {
  const built = builtOn(limit, inUse);
  return built !== undefined && inUse !== undefined && !inUse.rows.some(({ id }) => id === built.row.id);
}

function saysNothing(inUse: LimitSet, points: string[]): string[] {
  if (points.length === 0) return [];
  const they = `Figures from other sets: ${points.join(', ')}. ${named(inUse)}, in use here,`;
  return inUse.isPartial
    ? [`${they} was read in part, and not on these: whether it prints otherwise is not known here. Reassess the plan.`]
    : [`${they} has no figure on these. Keep your support for them on file.`];
}

const named = ({ title, edition }: LimitSet): string =>
  title.includes(edition) ? title : `${title}, edition ${edition}`;
