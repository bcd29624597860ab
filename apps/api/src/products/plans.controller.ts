import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { limitsIn } from '../platform/tell';
import { AdoptPlan } from './adopt-plan';
import { ownOnOffer } from './own-limits-on-offer';
import { ownEditions } from './own-limits.queries';
import { listControlPoints, showPlan } from './plans.queries';
import { publishedLimits } from './published-limits';
import { RecordPlan } from './record-plan';
import { listStarters } from './starter-plans';

@Controller('api/v1')
export class PlansController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
    private readonly recordPlan: RecordPlan,
    private readonly adoptPlan: AdoptPlan,
  ) {}

  @Route(contract.showPlan)
  show(@Input() { planId }: contract.InputOf<typeof contract.showPlan>, @SignedIn() by: Person) {
    const asked = { now: this.clock.now(), where: by.establishment };
    return this.db.transaction(by, (tx) => showPlan(tx, planId, by.voice, asked));
  }

  @Route(contract.recordPlan)
  record(@Input() input: contract.InputOf<typeof contract.recordPlan>, @SignedIn() by: Person) {
    return this.recordPlan.run(input, by);
  }

  @Route(contract.adoptPlan)
  adopt(@Input() input: contract.InputOf<typeof contract.adoptPlan>, @SignedIn() by: Person) {
    return this.adoptPlan.run(input, by);
  }

  @Route(contract.listStarterPlans)
  starters(@SignedIn() by: Person) {
    return listStarters(by.voice);
  }

  @Route(contract.listPublishedLimits)
  async limits(@SignedIn() by: Person) {
    const own = await this.db.transaction(by, ownEditions);
    const limits = limitsIn(by.voice);
    return publishedLimits(ownOnOffer(own, this.clock.now().toISOString().slice(0, 10), limits), limits);
  }

  @Route(contract.listControlPoints)
  async controlPoints(@SignedIn() by: Person) {
    return { controlPoints: await this.db.transaction(by, listControlPoints) };
  }
}
