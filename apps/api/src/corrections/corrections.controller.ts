import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { SignedIn, type Person } from '../platform/person';
import { CorrectDisposition } from './correct-disposition';
import { CorrectReceipt } from './correct-receipt';
import { VoidRecord } from './void-record';

@Controller('api/v1')
export class CorrectionsController {
  constructor(
    private readonly correctReceipt: CorrectReceipt,
    private readonly correctDisposition: CorrectDisposition,
    private readonly voidRecord: VoidRecord,
  ) {}

  @Route(contract.correctReceipt)
  receipt(@Input() input: InputOf<typeof contract.correctReceipt>, @SignedIn() by: Person) {
    return this.correctReceipt.run(input, by);
  }

  @Route(contract.correctDisposition)
  disposition(@Input() input: InputOf<typeof contract.correctDisposition>, @SignedIn() by: Person) {
    return this.correctDisposition.run(input, by);
  }

  @Route(contract.voidRecord)
  void(@Input() input: InputOf<typeof contract.voidRecord>, @SignedIn() by: Person) {
    return this.voidRecord.run(input, by);
  }
}
