import { Controller } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { itemsNow } from '../products/items-now';
import { RecordItem } from './record-item';
import { RecordReceipt } from './record-receipt';
import { RecordSupplier } from './record-supplier';
import { listReceiptPage, showReceipt } from './receipts.queries';
import { suppliersNow } from './suppliers-now';

@Controller('api/v1')
export class ReceivingController {
  constructor(
    private readonly db: Database,
    private readonly recordSupplier: RecordSupplier,
    private readonly recordItem: RecordItem,
    private readonly recordReceipt: RecordReceipt,
  ) {}

  @Route(contract.listSuppliers)
  async suppliers(@SignedIn() by: Person) {
    const suppliers = await this.db.transaction(by, (tx) => suppliersNow(tx));
    return { suppliers: byName(suppliers.values()) };
  }

  @Route(contract.recordSupplier)
  supplier(@Input() input: contract.InputOf<typeof contract.recordSupplier>, @SignedIn() by: Person) {
    return this.recordSupplier.run(input, by);
  }

  @Route(contract.listItems)
  async items(@SignedIn() by: Person) {
    const items = await this.db.transaction(by, (tx) => itemsNow(tx));
    return { items: byName(items.values()) };
  }

  @Route(contract.recordItem)
  item(@Input() input: contract.InputOf<typeof contract.recordItem>, @SignedIn() by: Person) {
    return this.recordItem.run(input, by);
  }

  @Route(contract.listReceipts)
  receipts(@Input() input: contract.InputOf<typeof contract.listReceipts>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => listReceiptPage(tx, input));
  }

  @Route(contract.showReceipt)
  showReceipt(@Input() { receiptId }: contract.InputOf<typeof contract.showReceipt>, @SignedIn() by: Person) {
    return this.db.transaction(by, (tx) => showReceipt(tx, receiptId));
  }

  @Route(contract.recordReceipt)
  receipt(@Input() input: contract.InputOf<typeof contract.recordReceipt>, @SignedIn() by: Person) {
    return this.recordReceipt.run(input, by);
  }
}

const byName = <T extends { name: string }>(things: Iterable<T>): T[] => [...things].sort((a, b) => a.name.localeCompare(b.name));
