import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { LotsController } from './lots.controller';
import { PutIn } from './put-in';
import { RecordRemoval } from './record-removal';
import { StartLot } from './start-lot';
import { WeighIn } from './weigh-in';

@Module({
  imports: [LedgerModule],
  controllers: [LotsController],
  providers: [StartLot, PutIn, WeighIn, RecordRemoval],
})
export class LotsModule {}
