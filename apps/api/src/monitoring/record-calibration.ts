import { Injectable } from '@nestjs/common';
import type { InputOf, recordCalibration } from '@larderbook/contracts';
import { judgeCheck } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { showInstrument, type Instrument } from './instruments.queries';

/** An instrument is checked against a known value and judged by its own tolerance (9 CFR 417.4(a)(2)(i)). */
@Injectable()
export class RecordCalibration {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  async run(input: InputOf<typeof recordCalibration>, by: Person): Promise<Instrument> {
    const { calibrationId, instrumentId, method, expected, observed, action, takenAt } = input;
    await this.once.run(by, { id: calibrationId, kind: 'calibration', subject: instrumentId, request: input }, async (tx, at) => {
      const instrument = await tx.instrument.findFirst({ where: { id: instrumentId }, select: { unit: true, tolerance: true } });
      if (!instrument) throw new Problem('not-found', { detail: 'There is no such instrument in this shop.' });
      const { unit } = instrument;
      const verdict = judgeCheck({ expected, observed, unit, tolerance: instrument.tolerance.toNumber() });
      await tx.calibration.create({
        data: {
          establishmentId: by.establishmentId, id: calibrationId, instrumentId, method, expected, observed, unit, verdict, action,
          station: by.station, takenAt: new Date(takenAt), recordedAt: at, recordedBy: by.personId,
        },
      });
      return { calibrationId };
    });
    return this.db.transaction(by, (tx) => showInstrument(tx, instrumentId, this.clock.now()));
  }
}
