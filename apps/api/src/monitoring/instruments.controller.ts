import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Clock } from '../platform/clock';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { listInstruments } from './instruments.queries';
import { RecordCalibration } from './record-calibration';
import { RecordInstrument } from './record-instrument';

@Controller('api/v1')
export class InstrumentsController {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
    private readonly recordInstrument: RecordInstrument,
    private readonly recordCalibration: RecordCalibration,
  ) {}

  @Route(contract.listInstruments)
  async list(@SignedIn() by: Person) {
    return { instruments: await this.db.transaction(by, (tx) => listInstruments(tx, this.clock.now())) };
  }

  @Route(contract.recordInstrument)
  add(@Input() input: InputOf<typeof contract.recordInstrument>, @SignedIn() by: Person) {
    return this.recordInstrument.run(input, by);
  }

  @Route(contract.recordCalibration)
  check(@Input() input: InputOf<typeof contract.recordCalibration>, @SignedIn() by: Person) {
    return this.recordCalibration.run(input, by);
  }
}
