import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { CloseDeviation } from './close-deviation';
import { listDeviations, showDeviation } from './deviations.queries';
import { MissShown } from './miss-shown';
import { OpenByHand } from './open-by-hand';
import { RecordCorrectiveAction } from './record-corrective-action';
import { RecordDestruction } from './record-destruction';
import { RecordDisposition } from './record-disposition';
import { TakeBackClosing } from './take-back-closing';

@Controller('api/v1')
export class DeviationsController {
  constructor(
    private readonly db: Database,
    private readonly missed: MissShown,
    private readonly openByHand: OpenByHand,
    private readonly recordCorrectiveAction: RecordCorrectiveAction,
    private readonly recordDisposition: RecordDisposition,
    private readonly recordDestruction: RecordDestruction,
    private readonly closeDeviation: CloseDeviation,
    private readonly takeBackClosing: TakeBackClosing,
  ) {}

  @Route(contract.listDeviations)
  async list(@Input() input: InputOf<typeof contract.listDeviations>, @SignedIn() by: Person) {
    const deviations = await this.db.transaction(by, async (tx) => this.missed.show(tx, await listDeviations(tx, input)));
    return { deviations };
  }

  @Route(contract.showDeviation)
  async show(@Input() { deviationId }: InputOf<typeof contract.showDeviation>, @SignedIn() by: Person) {
    const shown = await this.db.transaction(by, async (tx) => this.missed.show(tx, [await showDeviation(tx, deviationId)]));
    return shown[0] as contract.Deviation;
  }

  @Route(contract.openDeviation)
  open(@Input() input: InputOf<typeof contract.openDeviation>, @SignedIn() by: Person) {
    return this.openByHand.run(input, by);
  }

  @Route(contract.recordCorrectiveAction)
  act(@Input() input: InputOf<typeof contract.recordCorrectiveAction>, @SignedIn() by: Person) {
    return this.recordCorrectiveAction.run(input, by);
  }

  @Route(contract.recordDisposition)
  dispose(@Input() input: InputOf<typeof contract.recordDisposition>, @SignedIn() by: Person) {
    return this.recordDisposition.run(input, by);
  }

  @Route(contract.recordDestruction)
  destroy(@Input() input: InputOf<typeof contract.recordDestruction>, @SignedIn() by: Person) {
    return this.recordDestruction.run(input, by);
  }

  @Route(contract.closeDeviation)
  close(@Input() input: InputOf<typeof contract.closeDeviation>, @SignedIn() by: Person) {
    return this.closeDeviation.run(input, by);
  }

  @Route(contract.takeBackClosing)
  takeBack(@Input() input: InputOf<typeof contract.takeBackClosing>, @SignedIn() by: Person) {
    return this.takeBackClosing.run(input, by);
  }
}
