import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { CloseDeviation } from './close-deviation';
import { DeviationsController } from './deviations.controller';
import { OpenByHand } from './open-by-hand';
import { RecordCorrectiveAction } from './record-corrective-action';
import { RecordDestruction } from './record-destruction';
import { RecordDisposition } from './record-disposition';
import { TakeBackClosing } from './take-back-closing';

@Module({
  imports: [LedgerModule],
  controllers: [DeviationsController],
  providers: [OpenByHand, RecordCorrectiveAction, RecordDisposition, RecordDestruction, CloseDeviation, TakeBackClosing],
})
export class DeviationsModule {}
