import { Injectable } from '@nestjs/common';
import type { closeDeviation, InputOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { deviationToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';
import { toDecideOf } from './to-decide';

/** The hold ends with the last closing. */
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
      const { number, actions, isClosed, concerned } = await deviationToSettle(tx, deviationId);
      const toDecide = toDecideOf(concerned);
      const open = toDecide ? [told('still-to-decide', { number: String(number), ...toDecide })] : [];
      if (actions === 0) throw new Problem('actions-missing', [told('needs-action', { number: String(number) }), ...open]);
      if (open.length > 0) throw new Problem('product-undecided', [...(isClosed ? [told('closed-and-changed-since')] : []), ...open]);
      await tx.deviationClosing.create({ data: { ...keptBy(by, at), id: closingId, deviationId, note } });
      return { closingId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}
