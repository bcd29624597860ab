import { Injectable } from '@nestjs/common';
import type { adoptPlan, InputOf, Plan } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { formulaInUse } from './formula-in-use';
import { planFaults } from './plan-faults';
import { planById } from './plan-in-force';
import { showPlan } from './plans.queries';
import { unjudgedFaults } from './unjudged-faults';

/** The owner signs (9 CFR 417.2(d)). The plan takes the place of the one before. */
@Injectable()
export class AdoptPlan {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof adoptPlan>, by: Person): Promise<Plan> {
    const { adoptionId, planId, statement } = input;
    await this.once.run(by, { id: adoptionId, kind: 'plan adoption', subject: planId, request: input }, async (tx, at) => {
      const plan = await planById(tx, planId);
      if (!plan) throw new Problem('not-found', told('no-such-plan'));
      const formula = await formulaInUse(tx, plan.productId);
      const faults = [...planFaults(plan.content), ...unjudgedFaults(plan.content, formula?.lines ?? [])];
      if (faults.length > 0) throw new Problem('plan-incomplete', faults);

      const { count } = await tx.planAdoption.createMany({
        data: [
          {
            establishmentId: by.establishmentId,
            id: adoptionId,
            planId,
            statement,
            recordedAt: at,
            recordedBy: by.personId,
          },
        ],
        skipDuplicates: true, // a plan is adopted once; an older one returns as a new version
      });
      if (count === 0) throw new Problem('plan-adopted-already', told('version-adopted-before', { version: String(plan.version) }));
      return {};
    });
    return this.db.transaction(by, (tx) => showPlan(tx, planId, by.voice));
  }
}
