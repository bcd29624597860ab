import { Injectable } from '@nestjs/common';
import type { InputOf, recordCorrectiveAction } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { deviationToSettle } from './deviation-to-settle';
import { showDeviation } from './deviations.queries';

/** The four parts of 9 CFR 417.3(a), as often as there is something to add. */
@Injectable()
export class RecordCorrectiveAction {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordCorrectiveAction>, by: Person) {
    const { actionId, deviationId, cause, control, prevention, product, takenAt } = input;
    const sent = { id: actionId, kind: 'corrective-action', subject: deviationId, request: input };
    await this.once.run(by, sent, async (tx, at) => {
      await deviationToSettle(tx, deviationId);
      const parts = { cause, control, prevention, product };
      await tx.correctiveAction.create({ data: { ...keptBy(by, at), ...parts, id: actionId, deviationId, takenAt } });
      return { actionId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}
