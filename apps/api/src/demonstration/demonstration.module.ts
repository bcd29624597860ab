import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { DemonstrationController } from './demonstration.controller';
import { OpenDemonstration } from './open-demonstration';

@Module({ imports: [LedgerModule], controllers: [DemonstrationController], providers: [OpenDemonstration] })
export class DemonstrationModule {}
