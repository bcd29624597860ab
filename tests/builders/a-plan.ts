import type { Plan, PlanContent, Product } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { english } from '../../apps/api/src/platform/in-english.test-data';
import { listStarters } from '../../apps/api/src/products/starter-plans';
import type { Device } from '../support/device';
import { done } from './a-shop';
import { supported } from './with-support';

/** The plan to start from for a process, under ids of its own, with the support that an invented shop names. */
export function planContent(process: Product['process'] = 'cured smoked cooked'): PlanContent {
  const starter = listStarters(english).starters.find((one) => one.process === process);
  if (!starter) throw new Error(`There is no plan to start from for ${process}`);
  return supported(starter.content);
}

/** The next version of a product's plan, not yet adopted. */
export const aPlan = (owner: Device, productId: string, content: PlanContent = planContent()): Promise<Plan> =>
  done(owner.put(`/plans/${v7()}`, { productId, content }));

export const adopt = (owner: Device, planId: string): Promise<Plan> =>
  done(
    owner.put(`/plan-adoptions/${v7()}`, {
      planId,
      statement: 'I accept this plan as the plan of this establishment.',
    }),
  );

/** A plan that is signed and in force. */
export const anAdoptedPlan = async (owner: Device, productId: string, content?: PlanContent): Promise<Plan> =>
  adopt(owner, (await aPlan(owner, productId, content)).planId);
