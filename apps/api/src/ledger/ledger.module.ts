import { Module } from '@nestjs/common';
import { LedgerController } from './ledger.controller';
import { RecordOnce } from './record-once';

@Module({ controllers: [LedgerController], providers: [RecordOnce], exports: [RecordOnce] })
export class LedgerModule {}
