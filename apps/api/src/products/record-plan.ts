import { Injectable } from '@nestjs/common';
import type { InputOf, Plan, PlanContent, recordPlan } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { showPlan } from './plans.queries';
import { knownProduct } from './products.queries';

/** A version may be incomplete: it binds nobody until it is adopted. */
@Injectable()
export class RecordPlan {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordPlan>, by: Person): Promise<Plan> {
    const { planId, productId, content } = input;
    refuseSharedIds(content);
    await this.once.run(by, { id: planId, kind: 'plan', request: input }, async (tx, at) => {
      await knownProduct(tx, productId);
      const version = (await tx.plan.count({ where: { productId } })) + 1;
      const made = { establishmentId: by.establishmentId, recordedAt: at, recordedBy: by.personId };
      await tx.plan.create({ data: { ...made, id: planId, productId, version, content } });
      return {};
    });
    return this.db.transaction(by, (tx) => showPlan(tx, planId, by.voice));
  }
}

/** Records point at these by id, so no two in a plan share one. */
function refuseSharedIds({ steps, controlPoints }: PlanContent): void {
  const limits = controlPoints.flatMap((point) => point.limits.map(({ limitId }) => ({ id: limitId, name: point.name })));
  const named = [
    ...steps.map(({ stepId, name }) => ({ id: stepId, name })),
    ...controlPoints.map(({ controlPointId, name }) => ({ id: controlPointId, name })),
    ...limits,
  ];
  const seen = new Map<string, string>();
  for (const { id, name } of named) {
    const other = seen.get(id);
    if (other) throw new Problem('plan-incomplete', told('share-one-id', { one: other, other: name }));
    seen.set(id, name);
  }
}
