import type { PlanContent } from '@larderbook/contracts';
import { figureOf, newerEditionOf, type CriticalLimit, type LimitSet } from '@larderbook/haccp';
import { otherwise } from './otherwise';

type Asked = { own: readonly LimitSet[]; today: string };

/**
 * Why a plan built on limits of one's own should be looked at again: an edition that counts by now holds another figure
 * on the matter, or none any more. The plan itself, and every lot made by it, stay as they are.
 */
export function ownReasons({ controlPoints }: PlanContent, own: readonly LimitSet[], now: Date): string[] {
  const asked = { own, today: now.toISOString().slice(0, 10) };
  return controlPoints.flatMap(({ name, limits }) => [
    ...new Set(limits.flatMap(({ limit }) => reasonsFor(limit, asked)).map((reason) => `${name}: ${reason}`)),
  ]);
}

/** Two sets may hold the same figure, each with editions of its own; of several of one set the first found counts. */
function reasonsFor(limit: CriticalLimit, { own, today }: Asked): string[] {
  const figure = figureOf(limit);
  const reasons = new Map<string, string>();
  for (const set of own) {
    const row = set.rows.find((each) => figureOf(each.limit) === figure);
    const newer = row && newerEditionOf(own, { setId: set.id, today });
    if (!row || !newer || reasons.has(newer.id)) continue;
    const match = newer.rows.find(({ id }) => id === row.id);
    const says = match ? otherwise(row, match) : 'no longer holds it';
    if (says) reasons.set(newer.id, `built on ${named(set)}; ${named(newer)}, ${says}. Reassess the plan.`);
  }
  return [...reasons.values()];
}

const named = ({ title, edition }: LimitSet): string => `${title}, edition ${edition}`;
