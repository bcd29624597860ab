import { Injectable } from '@nestjs/common';
import type { Deviation, InputOf, takeBackClosing } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Database } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { showDeviation } from './deviations.queries';

/** The deviation is open again, and all that it held is on hold again. */
@Injectable()
export class TakeBackClosing {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof takeBackClosing>, by: Person): Promise<Deviation> {
    const { takingBackId: id, closingId, reason } = input;
    const sent = { id, kind: 'closing-taken-back', subject: closingId, request: input };
    const { deviationId } = await this.once.run(by, sent, async (tx, at) => {
      const closing = await tx.deviationClosing.findFirst({ where: { id: closingId }, include: { takenBack: true } });
      if (!closing) throw new Problem('not-found', told('no-such-closing'));
      if (closing.takenBack) throw new Problem('taken-back-already');
      await tx.closingTakenBack.create({ data: { ...keptBy(by, at), id, closingId, reason } });
      return { deviationId: closing.deviationId };
    });
    return this.db.transaction(by, (tx) => showDeviation(tx, deviationId));
  }
}
