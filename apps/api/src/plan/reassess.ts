import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { differencesOf, limitSets, newerEditionOf, type CriticalLimit, type LimitRow, type LimitSet } from '@larderbook/haccp';
import { figureOf } from './figure-of';

/**
 * Why a plan should be looked at again: a figure it was built on stands otherwise in a newer edition. The plan itself,
 * and every lot made by it, stay as they are (9 CFR 417.4(a)(3) asks for the reassessment, not for the change).
 */
export function reassessments({ controlPoints }: PlanContent, now: Date): string[] {
  const today = now.toISOString().slice(0, 10);
  return controlPoints.flatMap((point) => point.limits.flatMap(({ limit }) => reasonsFor(point, limit, today)));
}

function reasonsFor({ name }: ControlPoint, limit: CriticalLimit, today: string): string[] {
  const figure = figureOf(limit);
  const [built] = limitSets.flatMap((set) => set.rows.filter((row) => isFigure(row, figure)).map((row) => ({ set, row })));
  const newer = built && newerEditionOf(limitSets, { setId: built.set.id, today });
  const says = newer && otherwise(built.row, newer);
  return says ? [`${name}: built on ${built.set.title}; ${newer.title}, edition ${newer.edition}, ${says}. Reassess the plan.`] : [];
}

function otherwise(row: LimitRow, newer: LimitSet): string | undefined {
  const match = newer.rows.find(({ id }) => id === row.id);
  if (!match) return undefined;
  const [first] = differencesOf(row, match).filter(({ what }) => what !== 'known' && what !== 'force');
  if (!first) return undefined;
  const doubt = match.limit.source.confirmed ? '' : ', as far as is known';
  if (first.what === 'conditions') return `asks for other conditions${doubt}`;
  return `prints ${first.there} for ${first.what === 'figure' ? 'it' : first.what} instead of ${first.here}${doubt}`;
}

const isFigure = ({ limit }: LimitRow, figure: string): boolean => limit.kind !== 'figure' && figureOf(limit) === figure;
