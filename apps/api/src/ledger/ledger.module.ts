import { Module } from '@nestjs/common';
import { RecordOnce } from './record-once';

@Module({ providers: [RecordOnce], exports: [RecordOnce] })
export class LedgerModule {}
