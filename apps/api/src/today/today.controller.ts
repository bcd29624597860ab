import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Clock } from '../platform/clock';
import { Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { showToday } from './today.queries';

@Controller('api/v1')
export class TodayController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  @Route(contract.showToday)
  show(@SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => showToday(tx, this.clock.now()));
  }
}
