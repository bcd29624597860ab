import { Injectable } from '@nestjs/common';
import type { InputOf, recordProduct } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToAmend } from '../ledger/rows-that-count';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { listProducts, type ProductHead } from './products.queries';

/** A correction keeps the formula, the plan and the lots of the product. */
@Injectable()
export class RecordProduct {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordProduct>, by: Person): Promise<ProductHead> {
    const { productId, amends, ...fields } = input;
    const kept = await this.once.run(by, { id: productId, kind: 'product', request: input }, async (tx, at) => {
      const amended = amends === undefined ? undefined : await rowToAmend(tx, 'product', amends);
      const made = { establishmentId: by.establishmentId, recordedAt: at, recordedBy: by.personId };
      await tx.product.create({ data: { ...fields, ...made, id: productId, amendsId: amended?.amendsId } });
      return { productId: amended?.first ?? productId };
    });
    const [head] = await this.db.transaction(by, (tx) => listProducts(tx, [kept.productId]));
    if (!head) throw new Error(`Product ${kept.productId} was recorded and is not there`);
    return head;
  }
}
