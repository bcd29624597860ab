import { Injectable } from '@nestjs/common';
import type { InputOf, recordCalibration } from '@larderbook/contracts';
import { judgeCheck, type QuantityUnit } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect, type Amending } from '../ledger/row-to-correct';
import { Clock } from '../platform/clock';
import { Database, type Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import { keepVerdict } from '../platform/kept-verdict';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { showInstrument, type Instrument } from './instruments.queries';

/** Judged by the instrument's own tolerance (9 CFR 417.4(a)(2)(i)). */
@Injectable()
export class RecordCalibration {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
    private readonly clock: Clock,
  ) {}

  async run(input: InputOf<typeof recordCalibration>, by: Person): Promise<Instrument> {
    const { calibrationId, instrumentId, method, expected, observed, action, takenAt } = input;
    const sent = { id: calibrationId, kind: 'calibration', subject: instrumentId, request: input, happenedAt: takenAt };
    await this.once.run(by, sent, async (tx, at) => {
      const amending = await checkToCorrect(tx, input);
      const select = { unit: true, tolerance: true };
      const instrument = await tx.instrument.findFirst({ where: { id: instrumentId }, select });
      if (!instrument) throw new Problem('not-found', told('no-such-instrument'));

      const check = { expected, observed, unit: instrument.unit as QuantityUnit };
      const verdict = judgeCheck({ ...check, tolerance: instrument.tolerance.toNumber() });
      const entry = {
        id: calibrationId,
        instrumentId,
        method,
        action,
        takenAt: new Date(takenAt),
        station: by.station,
        ...amending,
      };
      await tx.calibrationRow.create({ data: { ...keptBy(by, at), ...entry, ...check, verdict: keepVerdict(verdict) } });
      return { calibrationId };
    });
    return this.db.transaction(by, (tx) => showInstrument(tx, instrumentId, this.clock.now()));
  }
}

async function checkToCorrect(tx: Tx, { instrumentId, amends, reason }: InputOf<typeof recordCalibration>): Promise<Amending | undefined> {
  if (amends && !(await tx.calibrationRow.findFirst({ where: { id: amends, instrumentId }, select: { id: true } })))
    throw new Problem('not-found', told('no-check-to-correct'));
  return rowToCorrect(tx, 'calibration', { amends, reason });
}
