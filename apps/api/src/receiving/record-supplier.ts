import { Injectable } from '@nestjs/common';
import type { InputOf, recordSupplier } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToAmend } from '../ledger/rows-that-count';
import type { Person } from '../platform/person';
import type { SupplierNow } from './suppliers-now';

@Injectable()
export class RecordSupplier {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof recordSupplier>, by: Person): Promise<SupplierNow> {
    const { supplierId, amends, ...fields } = input;
    return this.once.run(by, { id: supplierId, kind: 'supplier', request: input }, async (tx, at) => {
      const amended = amends === undefined ? undefined : await rowToAmend(tx, 'supplier', amends);
      const made = { establishmentId: by.establishmentId, recordedAt: at, recordedBy: by.personId };
      await tx.supplier.create({ data: { ...fields, ...made, id: supplierId, amendsId: amended?.amendsId } });
      return { ...fields, supplierId: amended?.first ?? supplierId };
    });
  }
}
