import type { ProductLimits } from '@larderbook/contracts';
import type { Voice } from '@larderbook/messages';
import type { Tx } from '../platform/database';
import { limitsIn } from '../platform/tell';
import { judgedBy } from './in-plan';
import { limitsForProduct } from './limits-that-apply';
import { planById, planInForce, type PlanInForce } from './plan-in-force';
import { knownProduct } from './products.queries';
import type { AskedFor } from './reassess';

/** Compares with the plan in force, else with the newest version. Throws `not-found`. */
export async function showProductLimits(tx: Tx, productId: string, { now, where }: AskedFor, voice: Voice): Promise<ProductLimits> {
  const { productClass } = await knownProduct(tx, productId);
  const inForce = await planInForce(tx, productId);
  const plan = inForce ?? (await newestPlan(tx, productId));
  const judged = plan && judgedBy(plan.content);
  return {
    ...limitsForProduct({ productClass, where, judged, now, limits: limitsIn(voice) }),
    plan: plan && { planId: plan.planId, version: plan.version, inForce: inForce !== undefined },
  };
}

async function newestPlan(tx: Tx, productId: string): Promise<PlanInForce | undefined> {
  const found = await tx.plan.findFirst({ where: { productId }, orderBy: { version: 'desc' }, select: { id: true } });
  return found ? planById(tx, found.id) : undefined;
}
