import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Clock } from '../platform/clock';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { explainPoint } from './explain-point';
import { listLots } from './lots.queries';
import { PutIn } from './put-in';
import { RecordRemoval } from './record-removal';
import { showLot } from './show-lot';
import { StartLot } from './start-lot';
import { WeighIn } from './weigh-in';

@Controller('api/v1')
export class LotsController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
    private readonly startLot: StartLot,
    private readonly putIn: PutIn,
    private readonly weighIn: WeighIn,
    private readonly recordRemoval: RecordRemoval,
  ) {}

  @Route(contract.listLots)
  list(@Input() input: InputOf<typeof contract.listLots>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => listLots(tx, input, this.clock.now()));
  }

  @Route(contract.showLot)
  show(@Input() { lotId }: InputOf<typeof contract.showLot>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => showLot(tx, lotId, this.clock.now()));
  }

  @Route(contract.explainPoint)
  explain(@Input() input: InputOf<typeof contract.explainPoint>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => explainPoint(tx, input, by, this.clock.now()));
  }

  @Route(contract.startLot)
  start(@Input() input: InputOf<typeof contract.startLot>, @SignedIn() by: Person) {
    return this.startLot.run(input, by);
  }

  @Route(contract.putIn)
  put(@Input() input: InputOf<typeof contract.putIn>, @SignedIn() by: Person) {
    return this.putIn.run(input, by);
  }

  @Route(contract.weighIn)
  weigh(@Input() input: InputOf<typeof contract.weighIn>, @SignedIn() by: Person) {
    return this.weighIn.run(input, by);
  }

  @Route(contract.recordRemoval)
  remove(@Input() input: InputOf<typeof contract.recordRemoval>, @SignedIn() by: Person) {
    return this.recordRemoval.run(input, by);
  }
}
