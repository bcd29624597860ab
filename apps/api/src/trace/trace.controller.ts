import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { findTrace } from './find-trace.queries';
import { showTrace } from './show-trace';
import { traceSupplierLot } from './trace-supplier-lot';

@Controller('api/v1')
export class TraceController {
  constructor(private readonly db: Database) {}

  @Route(contract.findTrace)
  find(@Input() { words }: InputOf<typeof contract.findTrace>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => findTrace(tx, words));
  }

  @Route(contract.traceSupplierLot)
  supplierLot(@Input() input: InputOf<typeof contract.traceSupplierLot>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => traceSupplierLot(tx, input));
  }

  @Route(contract.showTrace)
  show(@Input() { nodeId }: InputOf<typeof contract.showTrace>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => showTrace(tx, nodeId));
  }
}
