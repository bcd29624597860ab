import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { compareSets } from './compare-sets';
import { plansUsing } from './plans-using.queries';
import { listSets, showSet } from './show-limit-set';

@Controller('api/v1')
export class LimitSetsController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  @Route(contract.listLimitSets)
  list() {
    return { sets: listSets() };
  }

  @Route(contract.showLimitSet)
  async show(@Input() { set }: contract.InputOf<typeof contract.showLimitSet>, @SignedIn() by: Person) {
    const usedBy = await this.db.transaction(by, plansUsing);
    return showSet(set, usedBy, this.clock.now());
  }

  @Route(contract.compareLimitSets)
  compare(@Input() { here, there }: contract.InputOf<typeof contract.compareLimitSets>) {
    return compareSets(here, there);
  }
}
