import type { PlanContent } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

export type PlanInForce = { planId: string; productId: string; version: number; title: string; content: PlanContent };

/** The plan a product is made by today: of its signed versions the one adopted last. */
export const planInForce = (tx: Tx, productId: string): Promise<PlanInForce | undefined> =>
  readPlan(
    tx,
    Prisma.sql`JOIN plan_adoption a ON a.plan_id = p.id WHERE p.product_id = ${productId}::uuid
      ORDER BY a.recorded_at DESC, a.id DESC`,
  );

/** One version, adopted or not: a lot keeps to the one it was started on. */
export const planById = (tx: Tx, planId: string): Promise<PlanInForce | undefined> =>
  readPlan(tx, Prisma.sql`WHERE p.id = ${planId}::uuid`);

/** The content was read by the contract before it was written, so it is not read by it again. */
async function readPlan(tx: Tx, chosen: Prisma.Sql): Promise<PlanInForce | undefined> {
  const [plan] = await tx.$queryRaw<PlanInForce[]>`
    SELECT p.id AS "planId", p.product_id AS "productId", p.version, p.content->>'title' AS title, p.content
    FROM plan p ${chosen} LIMIT 1`;
  return plan;
}
