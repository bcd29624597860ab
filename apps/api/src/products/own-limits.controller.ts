import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { ownEditions } from './own-limits.queries';
import { RecordOwnLimits } from './record-own-limits';
import { rowsToTake } from './rows-to-take';

@Controller('api/v1')
export class OwnLimitsController {
  constructor(
    private readonly db: Database,
    private readonly recordOwnLimits: RecordOwnLimits,
  ) {}

  @Route(contract.recordOwnLimits)
  record(@Input() input: contract.InputOf<typeof contract.recordOwnLimits>, @SignedIn() by: Person) {
    return this.recordOwnLimits.run(input, by);
  }

  @Route(contract.rowsToTake)
  async rows(@Input() { set }: contract.InputOf<typeof contract.rowsToTake>, @SignedIn() by: Person) {
    return rowsToTake(set, await this.db.transaction(by, ownEditions));
  }
}
