import { Injectable } from '@nestjs/common';
import type { correctDisposition, Deviation, InputOf } from '@larderbook/contracts';
import { deviationsWith } from '../deviations/deviation-to-settle';
import { showDeviation } from '../deviations/deviations.queries';
import { keepDisposition } from '../deviations/record-disposition';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect } from '../ledger/row-to-correct';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { checkNotCarriedOut } from './void-decision';

/**
 * The product is never undecided between the old decision and the new. What the new one leaves undecided is held again,
 * even after the closing.
 */
@Injectable()
export class CorrectDisposition {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof correctDisposition>, by: Person): Promise<Deviation> {
    const { correctionId: id, amends, reason, disposition } = input;
    const [first = ''] = disposition.deviationIds;
    await this.once.run(by, { id, kind: 'disposition', subject: first, request: input }, async (tx, at) => {
      const amending = await rowToCorrect(tx, 'disposition', { amends, reason });
      await checkNotCarriedOut(tx, amends);
      const deviations = await deviationsWith(tx, disposition.deviationIds, amends);
      await keepDisposition(tx, { id, disposition, deviations, amending }, by, at);
      return { correctionId: id };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, first));
  }
}
