import { Readable } from 'node:stream';
import { Controller, StreamableFile } from '@nestjs/common';
import { exportLedger, ledgerHead, verifyLedger } from '@larderbook/contracts';
import { Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import type { Look } from './entries';
import { exportChain } from './export-chain';
import { showLedger } from './ledger.queries';
import { verifyBook } from './verify-book';

@Controller('api/v1')
export class LedgerController {
  constructor(private readonly db: Database) {}

  @Route(ledgerHead)
  head(@SignedIn() by: Person) {
    return this.db.transaction(by, showLedger);
  }

  @Route(verifyLedger)
  verify(@SignedIn() by: Person) {
    return verifyBook(this.looking(by), by.establishmentId);
  }

  @Route(exportLedger)
  export(@SignedIn() by: Person) {
    const lines = Readable.from(exportChain(this.looking(by), by.establishmentId), { objectMode: false });
    return new StreamableFile(lines, { disposition: 'attachment; filename="ledger.ndjson"' });
  }

  private looking(by: Person): Look {
    return (work) => this.db.transaction(by, work);
  }
}
