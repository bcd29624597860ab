import { Injectable } from '@nestjs/common';
import type { InputOf, recordInstrument } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { showInstrument, type Instrument } from './instruments.queries';

/** An instrument counts as overdue until its first check. */
@Injectable()
export class RecordInstrument {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  async run(input: InputOf<typeof recordInstrument>, by: Person): Promise<Instrument> {
    const { instrumentId, ...fields } = input;
    await this.once.run(by, { id: instrumentId, kind: 'instrument', request: input }, async (tx, at) => {
      await tx.instrument.create({ data: { ...keptBy(by, at), ...fields, id: instrumentId } });
      return { instrumentId };
    });
    return this.db.transaction(by, (tx) => showInstrument(tx, instrumentId, this.clock.now()));
  }
}
