import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { SignedIn, type Person } from '../platform/person';
import { ClarifyReadings } from './clarify-readings';
import { EndStage } from './end-stage';
import { RecordReading } from './record-reading';

@Controller('api/v1')
export class ReadingsController {
  constructor(
    private readonly recordReading: RecordReading,
    private readonly endStage: EndStage,
    private readonly clarifyReadings: ClarifyReadings,
  ) {}

  @Route(contract.recordReading)
  record(@Input() input: InputOf<typeof contract.recordReading>, @SignedIn() by: Person) {
    return this.recordReading.run(input, by);
  }

  @Route(contract.endStage)
  end(@Input() input: InputOf<typeof contract.endStage>, @SignedIn() by: Person) {
    return this.endStage.run(input, by);
  }

  @Route(contract.clarifyReadings)
  clarify(@Input() input: InputOf<typeof contract.clarifyReadings>, @SignedIn() by: Person) {
    return this.clarifyReadings.run(input, by);
  }
}
