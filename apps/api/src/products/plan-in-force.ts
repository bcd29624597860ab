import type { PlanContent } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import type { Tx } from '../platform/database';

export type PlanInForce = { planId: string; productId: string; version: number; title: string; content: PlanContent };

/** The signed version adopted last is in force. */
export async function planInForce(tx: Tx, productId: string): Promise<PlanInForce | undefined> {
  const [plan] = await readPlans(
    tx,
    Prisma.sql`JOIN plan_adoption a ON a.plan_id = p.id WHERE p.product_id = ${productId}::uuid
      ORDER BY a.seq DESC LIMIT 1`,
  );
  return plan;
}

/** A lot keeps the version it was started on, adopted or not. */
export const planById = async (tx: Tx, planId: string): Promise<PlanInForce | undefined> => (await plansById(tx, [planId])).get(planId);

export async function plansById(tx: Tx, planIds: readonly string[]): Promise<ReadonlyMap<string, PlanInForce>> {
  const plans = await readPlans(tx, Prisma.sql`WHERE p.id = ANY(${planIds}::uuid[])`);
  return new Map(plans.map((plan) => [plan.planId, plan]));
}

/** The contract checked the content before it was written. */
const readPlans = (tx: Tx, chosen: Prisma.Sql): Promise<PlanInForce[]> => tx.$queryRaw`
  SELECT p.id AS "planId", p.product_id AS "productId", p.version, p.content->>'title' AS title, p.content
  FROM plan p ${chosen}`;
