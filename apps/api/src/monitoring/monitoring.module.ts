import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { ClarifyReadings } from './clarify-readings';
import { EndStage } from './end-stage';
import { InstrumentsController } from './instruments.controller';
import { ReadingsController } from './readings.controller';
import { RecordCalibration } from './record-calibration';
import { RecordInstrument } from './record-instrument';
import { RecordReading } from './record-reading';

@Module({
  imports: [LedgerModule],
  controllers: [ReadingsController, InstrumentsController],
  providers: [RecordReading, EndStage, ClarifyReadings, RecordInstrument, RecordCalibration],
})
export class MonitoringModule {}
