import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { CorrectDisposition } from './correct-disposition';
import { CorrectReceipt } from './correct-receipt';
import { CorrectionsController } from './corrections.controller';
import { VoidRecord } from './void-record';

@Module({
  imports: [LedgerModule],
  controllers: [CorrectionsController],
  providers: [CorrectReceipt, CorrectDisposition, VoidRecord],
})
export class CorrectionsModule {}
