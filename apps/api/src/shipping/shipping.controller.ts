import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { listCustomers } from './customers.queries';
import { PackLot } from './pack-lot';
import { listPackings } from './packings.queries';
import { RecordCustomer } from './record-customer';
import { RecordShipment } from './record-shipment';
import { listShipments } from './shipments.queries';

@Controller('api/v1')
export class ShippingController {
  constructor(
    private readonly db: Database,
    private readonly recordCustomer: RecordCustomer,
    private readonly packLot: PackLot,
    private readonly recordShipment: RecordShipment,
  ) {}

  @Route(contract.listCustomers)
  async customers(@SignedIn() by: Person) {
    return { customers: await this.db.transaction(by, listCustomers) };
  }

  @Route(contract.recordCustomer)
  customer(@Input() input: InputOf<typeof contract.recordCustomer>, @SignedIn() by: Person) {
    return this.recordCustomer.run(input, by);
  }

  @Route(contract.packLot)
  pack(@Input() input: InputOf<typeof contract.packLot>, @SignedIn() by: Person) {
    return this.packLot.run(input, by);
  }

  @Route(contract.listPackings)
  async packings(@Input() input: InputOf<typeof contract.listPackings>, @SignedIn() by: Person) {
    return { packings: await this.db.transaction(by, (tx) => listPackings(tx, input)) };
  }

  @Route(contract.listShipments)
  shipments(@Input() input: InputOf<typeof contract.listShipments>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => listShipments(tx, input));
  }

  @Route(contract.recordShipment)
  ship(@Input() input: InputOf<typeof contract.recordShipment>, @SignedIn() by: Person) {
    return this.recordShipment.run(input, by);
  }
}
