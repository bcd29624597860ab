import { figureOf, type CriticalLimit } from '@larderbook/haccp';
import type { Tx } from '../platform/database';

type PlanNamed = { planId: string; title: string };
export type PlansUsing = (limit: CriticalLimit) => PlanNamed[];

type LimitInForce = PlanNamed & { limit: CriticalLimit };

/** A plan holds a copy of each figure with its source. */
export async function plansUsing(tx: Tx): Promise<PlansUsing> {
  const rows = await tx.$queryRaw<LimitInForce[]>`
    SELECT DISTINCT f."planId", f.title, l.held->'limit' AS "limit"
    FROM (SELECT DISTINCT ON (p.product_id) p.id AS "planId", p.content->>'title' AS title, p.content
          FROM plan p JOIN plan_adoption a ON a.plan_id = p.id
          ORDER BY p.product_id, a.seq DESC) f
    CROSS JOIN LATERAL jsonb_array_elements(f.content->'controlPoints') AS c(point)
    CROSS JOIN LATERAL jsonb_array_elements(c.point->'limits') AS l(held)
    ORDER BY f.title`;
  const byFigure = new Map<string, PlanNamed[]>();
  for (const { planId, title, limit } of rows) {
    const key = figureOf(limit);
    byFigure.set(key, [...(byFigure.get(key) ?? []), { planId, title }]);
  }
  return (limit) => byFigure.get(figureOf(limit)) ?? [];
}
