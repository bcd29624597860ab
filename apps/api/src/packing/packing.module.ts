import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { PackLot } from './pack-lot';
import { PackingController } from './packing.controller';
import { RecordCustomer } from './record-customer';
import { RecordShipment } from './record-shipment';

@Module({
  imports: [LedgerModule],
  controllers: [PackingController],
  providers: [RecordCustomer, PackLot, RecordShipment],
})
export class PackingModule {}
