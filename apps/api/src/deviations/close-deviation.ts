import { Injectable } from '@nestjs/common';
import type { closeDeviation, InputOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { deviationToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';

/** Closes a deviation once it has its corrective action and its disposition; the hold ends with the last one. */
@Injectable()
export class CloseDeviation {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof closeDeviation>, by: Person) {
    const { closingId, deviationId, note } = input;
    const sent = { id: closingId, kind: 'deviation-closing', subject: deviationId, request: input };
    await this.once.run(by, sent, async (tx, at) => {
      const { number, actions, hasDisposition } = await deviationToSettle(tx, deviationId);
      const action = actions === 0 ? ['its corrective action'] : [];
      const missing = [...action, ...(hasDisposition ? [] : ['its disposition'])].join(' and ');
      if (missing) throw new Problem('actions-missing', { detail: `Deviation ${number} still needs ${missing}.` });
      await tx.deviationClosing.create({ data: { ...keptBy(by, at), id: closingId, deviationId, note } });
      return { closingId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}
