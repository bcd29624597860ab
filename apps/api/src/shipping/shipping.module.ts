import { Module } from '@nestjs/common';
import { LedgerModule } from '../ledger/ledger.module';
import { PackLot } from './pack-lot';
import { ShippingController } from './shipping.controller';
import { RecordCustomer } from './record-customer';
import { RecordShipment } from './record-shipment';

@Module({
  imports: [LedgerModule],
  controllers: [ShippingController],
  providers: [RecordCustomer, PackLot, RecordShipment],
})
export class ShippingModule {}
