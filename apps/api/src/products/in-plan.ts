import type { LimitThatApplies, PlanContent } from '@larderbook/contracts';
import { figureOf, type CriticalLimit, type LimitRow } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import { printedWhere } from './printed-where';

/** `name` is the control point that judges by the limit. */
export type JudgedBy = { name: string; limit: CriticalLimit };

export const judgedBy = ({ controlPoints }: PlanContent): JudgedBy[] =>
  controlPoints.flatMap(({ name, limits }) => limits.map(({ limit }) => ({ name, limit })));

/** A figure changed in the plan is its owner's own, not a set's. */
export function inPlan(row: LimitRow, judged: JudgedBy[] | undefined, { sayName }: LimitTeller): LimitThatApplies['inPlan'] {
  if (!judged) return { kind: 'no plan', at: [], from: [] };
  const figure = figureOf(row.limit);
  const same = judged.filter(({ limit }) => figureOf(limit) === figure);
  if (same.length > 0) return { kind: 'this figure', at: namesOf(same), from: [] };

  const onTheSame = judged.flatMap(({ name, limit }) =>
    printedWhere(limit)
      .filter((printed) => printed.row.id === row.id)
      .map(({ set }) => ({ name, title: sayName(set.title) })),
  );
  if (onTheSame.length === 0) return { kind: 'nothing', at: [], from: [] };
  return { kind: 'another figure', at: namesOf(onTheSame), from: [...new Set(onTheSame.map(({ title }) => title))] };
}

const namesOf = (points: { name: string }[]): string[] => [...new Set(points.map(({ name }) => name))];
