import { Injectable } from '@nestjs/common';
import type { InputOf, recordShipment } from '@larderbook/contracts';
import { v7 } from 'uuid';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { customersNow } from './customers.queries';
import { checkGoods } from './goods-to-ship';
import { showShipment } from './shipments.queries';

/** Ships packages of cleared lots to a customer: the whole load, or nothing of it. */
@Injectable()
export class RecordShipment {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordShipment>, by: Person) {
    const { shipmentId: id, customerId, document, lines } = input;
    const { establishmentId, station, personId } = by;
    await this.once.run(by, { id, kind: 'shipment', request: input }, async (tx, at) => {
      if (!(await customersNow(tx, [customerId])).has(customerId))
        throw new Problem('not-found', { detail: 'There is no such customer in this shop.' });
      await checkGoods(tx, lines);

      const { _max } = await tx.shipmentRow.aggregate({ _max: { number: true } });
      const number = (_max.number ?? 0) + 1;
      const made = { station, takenAt: new Date(input.takenAt), recordedAt: at, recordedBy: personId };
      const { count } = await tx.shipmentRow.createMany({
        data: [{ establishmentId, id, number, customerId, document, ...made }],
        skipDuplicates: true,
      });
      if (count === 0) throw new Problem('sent-differently');
      await tx.shipmentLineRow.createMany({
        data: lines.map((line) => ({ ...line, establishmentId, id: v7(), shipmentId: id })),
      });
      return {};
    });
    return this.db.transaction(by, (tx) => showShipment(tx, id));
  }
}
