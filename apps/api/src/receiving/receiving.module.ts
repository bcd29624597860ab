import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { ReceivingController } from './receiving.controller';
import { RecordItem } from './record-item';
import { RecordReceipt } from './record-receipt';
import { RecordSupplier } from './record-supplier';

@Module({
  imports: [LedgerModule],
  controllers: [ReceivingController],
  providers: [RecordSupplier, RecordItem, RecordReceipt],
})
export class ReceivingModule {}
