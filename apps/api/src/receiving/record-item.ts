import { Injectable } from '@nestjs/common';
import type { InputOf, recordItem } from '@larderbook/contracts';
import { isOfKind, type CriticalLimit } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { rowToAmend } from '../ledger/rows-that-count';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import type { ItemNow } from '../products/items-now';

/** A correction does not count for what was weighed before. */
@Injectable()
export class RecordItem {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof recordItem>, by: Person): Promise<ItemNow> {
    const { itemId, amends, ...fields } = input;
    checkReceivingLimit(fields.receivingLimit);
    return this.once.run(by, { id: itemId, kind: 'item', request: input }, async (tx, at) => {
      const amended = amends === undefined ? undefined : await rowToAmend(tx, 'item', amends);
      const made = { establishmentId: by.establishmentId, recordedAt: at, recordedBy: by.personId };
      await tx.item.create({ data: { ...fields, ...made, id: itemId, amendsId: amended?.amendsId } });
      return { ...fields, itemId: amended?.first ?? itemId };
    });
  }
}

/** A delivery is judged by temperature alone. */
function checkReceivingLimit(limit: CriticalLimit | undefined): void {
  if (!isOfKind(limit, 'range')) return;
  const bounds = [limit.min, limit.max].filter((bound) => bound !== undefined);
  if (limit.measured === 'temperature' && bounds.length > 0 && bounds.every((bound) => typeof bound === 'object')) return;
  throw new Problem('invalid-input', told('range-of-temperatures'), '#/receivingLimit');
}
