import { plan, type Plan, type planSummary } from '@larderbook/contracts';
import type { Voice } from '@larderbook/messages';
import type { z } from 'zod';
import { personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { sayTold, told } from '../platform/told';
import { figuresFromElsewhere } from './figures-from-elsewhere';
import { formulaInUse } from './formula-in-use';
import { ownReasons } from './own-limits-reassess';
import { ownEditions } from './own-limits.queries';
import { planFaults } from './plan-faults';
import { planInForce } from './plan-in-force';
import { planWarnings } from './plan-warnings';
import { productsNow } from './products-now';
import { unjudgedFaults } from './unjudged-faults';
import { reassessments, type AskedFor } from './reassess';
import { reasonsIn } from './reasons-in';

export type PlanSummary = z.output<typeof planSummary>;
type SummaryRow = Pick<PlanSummary, 'planId' | 'version' | 'title' | 'recordedBy'> & {
  recordedAt: Date;
  adoptedAt: Date | null;
  adoptedBy: string | null;
};

/** Latest first. */
export async function planSummaries(tx: Tx, productId: string): Promise<PlanSummary[]> {
  const rows = await tx.$queryRaw<SummaryRow[]>`
    SELECT p.id AS "planId", p.version, p.content->>'title' AS title,
      p.recorded_at AS "recordedAt", p.recorded_by AS "recordedBy", a.recorded_at AS "adoptedAt", a.recorded_by AS "adoptedBy"
    FROM plan p LEFT JOIN plan_adoption a ON a.plan_id = p.id
    WHERE p.product_id = ${productId}::uuid ORDER BY p.version DESC`;
  const inForce = await planInForce(tx, productId);
  const names = await personNames(tx);
  return rows.map(({ recordedAt, recordedBy, adoptedAt, adoptedBy, ...row }) => ({
    ...row,
    recordedAt: recordedAt.toISOString(),
    recordedBy: names.get(recordedBy) ?? '',
    adoptedAt: adoptedAt?.toISOString(),
    adoptedBy: adoptedBy === null ? undefined : names.get(adoptedBy),
    inForce: row.planId === inForce?.planId,
  }));
}

/** Reasons to reassess are found only when `asked`. Throws `not-found`. */
export async function showPlan(tx: Tx, planId: string, voice: Voice, asked?: AskedFor): Promise<Plan> {
  const row = await tx.plan.findFirst({ where: { id: planId }, include: { adoptions: true } });
  if (!row) throw new Problem('not-found', told('no-such-plan'));
  const product = (await productsNow(tx, [row.productId])).get(row.productId);
  const inForce = await planInForce(tx, row.productId);
  const names = await personNames(tx);
  const [adoption] = row.adoptions;

  const shown = plan.parse({
    planId,
    productId: row.productId,
    productName: product?.name,
    version: row.version,
    content: row.content,
    recordedAt: row.recordedAt.toISOString(),
    recordedBy: names.get(row.recordedBy),
    adoptedAt: adoption?.recordedAt.toISOString(),
    adoptedBy: adoption && names.get(adoption.recordedBy),
    statement: adoption?.statement,
    inForce: inForce?.planId === planId,
    incomplete: [],
    warnings: [],
  });
  const { content } = shown;
  const reasons = reasonsIn(voice);
  const reassess = asked && [...reassessments(content, asked, reasons), ...ownReasons(content, await ownEditions(tx), asked.now, reasons)];
  const elsewhere = asked && figuresFromElsewhere(content, asked.where, reasons);
  const inWords = sayTold(voice);
  const warnings = [...planWarnings(content, product, reasons.limits).map(inWords), ...(reassess ?? []), ...(elsewhere ?? [])];
  const lines = (await formulaInUse(tx, row.productId))?.lines ?? [];
  const incomplete = [...planFaults(content), ...unjudgedFaults(content, lines)].map(inWords);
  return { ...shown, incomplete, warnings, reassess, elsewhere };
}

type ListedControlPoint = {
  controlPointId: string;
  name: string;
  kind: 'critical' | 'prerequisite';
  productName: string;
  planTitle: string;
};

/** Each point once, as the version adopted last names it. */
export async function listControlPoints(tx: Tx): Promise<ListedControlPoint[]> {
  const products = await productsNow(tx);
  const rows = await tx.$queryRaw<(Omit<ListedControlPoint, 'productName'> & { productId: string })[]>`
    SELECT DISTINCT ON (p.product_id, c.point->>'controlPointId')
      p.product_id AS "productId", c.point->>'controlPointId' AS "controlPointId",
      c.point->>'name' AS name, c.point->>'kind' AS kind, p.content->>'title' AS "planTitle"
    FROM plan p JOIN plan_adoption a ON a.plan_id = p.id
    CROSS JOIN LATERAL jsonb_array_elements(p.content->'controlPoints') AS c(point)
    ORDER BY p.product_id, c.point->>'controlPointId', a.seq DESC`;
  const listed = rows.map(({ productId, ...row }) => ({ ...row, productName: products.get(productId)?.name ?? '' }));
  return listed.sort((a, b) => a.productName.localeCompare(b.productName) || a.name.localeCompare(b.name));
}
