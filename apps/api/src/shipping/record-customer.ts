import { Injectable } from '@nestjs/common';
import type { InputOf, recordCustomer } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToAmend } from '../ledger/rows-that-count';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import type { Customer } from './customers.queries';

@Injectable()
export class RecordCustomer {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof recordCustomer>, by: Person): Promise<Customer> {
    const { customerId: id, amends, ...fields } = input;
    return this.once.run(by, { id, kind: 'customer', request: input }, async (tx, at) => {
      const corrected = amends ? await rowToAmend(tx, 'customer', amends) : undefined;
      const row = {
        ...fields,
        establishmentId: by.establishmentId,
        id,
        amendsId: corrected?.amendsId,
        recordedAt: at,
        recordedBy: by.personId,
      };
      const { count } = await tx.customer.createMany({ data: [row], skipDuplicates: true });
      if (count === 0) throw new Problem('sent-differently');
      return { ...fields, customerId: corrected?.first ?? id };
    });
  }
}
