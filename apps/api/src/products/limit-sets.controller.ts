import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { limitsIn } from '../platform/tell';
import { compareSets } from './compare-sets';
import { ownEditions } from './own-limits.queries';
import { plansUsing } from './plans-using.queries';
import { listSets, showSet } from './show-limit-set';

@Controller('api/v1')
export class LimitSetsController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  @Route(contract.listLimitSets)
  async list(@SignedIn() by: Person) {
    return { sets: listSets(await this.db.transaction(by, ownEditions), limitsIn(by.voice)) };
  }

  @Route(contract.showLimitSet)
  async show(@Input() { set }: contract.InputOf<typeof contract.showLimitSet>, @SignedIn() by: Person) {
    const now = this.clock.now();
    return this.db.transaction(by, async (tx) =>
      showSet(set, { own: await ownEditions(tx), usedBy: await plansUsing(tx), now, limits: limitsIn(by.voice) }),
    );
  }

  @Route(contract.compareLimitSets)
  async compare(@Input() asked: contract.InputOf<typeof contract.compareLimitSets>, @SignedIn() by: Person) {
    return compareSets(asked, await this.db.transaction(by, ownEditions), by.voice);
  }
}
