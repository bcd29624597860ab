import { Injectable } from '@nestjs/common';
import type { ControlPoint, endStage, InputOf, Judged, ReplyOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { judgeControlPoint } from '../lots/judge-control-point';
import { lotToRecordOn } from '../lots/lot-to-record-on';
import { causeOnLot, openForMisses } from '../lots/open-for-misses';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { lotAtPoint, readingsAt } from './readings.queries';

type Input = InputOf<typeof endStage>;

/** A cook or a chill is finished: its limits are judged as a whole, and those of the stage whose clock it starts. */
@Injectable()
export class EndStage {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof endStage>> {
    const { stageEndId, lotId, controlPointId } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: stageEndId, kind: 'stage-end', subject: lotId, request: input }, async (tx, at) => {
      const { point, endedAt } = await lotAtPoint(tx, lotId, controlPointId);
      if (point.takenAs !== 'curve') throw new Problem('wrong-kind-of-value', { detail: `${point.name} is not a series of readings; there is nothing to finish.` });
      if (endedAt) throw new Problem('stage-ended-already', { detail: `${point.name} was finished at ${endedAt.toISOString()}.` });

      const row = { lotId, subjectId: stageEndId, takenAt };
      const judged = await judgeAt(tx, lotId, controlPointId, { endedAt: takenAt, now: at });
      await tx.stageEnd.create({
        data: {
          establishmentId: by.establishmentId, id: stageEndId, lotId, controlPointId, judged, station: by.station, takenAt, recordedAt: at,
          recordedBy: by.personId,
        },
      });
      const own = await openForMisses(tx, { ...row, point, judged, causeOf: causeOnLot(lotId, controlPointId) }, by, at);
      const followers = await judgeFollowers(tx, point, row, by, at);
      return { stageEndId, controlPointId, verdicts: judged.map(({ limitId, verdict }) => ({ limitId, verdict })), deviationId: own ?? followers };
    });
  }
}

type Row = { lotId: string; subjectId: string; takenAt: Date };

/** The end of a cook, entered after its chill had begun, may show that the chill was too slow. */
async function judgeFollowers(tx: Tx, { controlPointId }: ControlPoint, row: Row, by: Person, at: Date): Promise<string | undefined> {
  const { controlPoints } = await lotToRecordOn(tx, row.lotId);
  let first: string | undefined;
  for (const point of controlPoints.filter(({ follows }) => follows === controlPointId)) {
    const judged = await judgeAt(tx, row.lotId, point.controlPointId, { now: at });
    const opened = await openForMisses(tx, { ...row, point, judged, causeOf: causeOnLot(row.lotId, point.controlPointId) }, by, at);
    first ??= opened;
  }
  return first;
}

/** A curve as it stands in the records, or as it will when it is finished. */
async function judgeAt(tx: Tx, lotId: string, controlPointId: string, { endedAt, now }: { endedAt?: Date; now: Date }): Promise<Judged[]> {
  const at = await lotAtPoint(tx, lotId, controlPointId);
  const readings = await readingsAt(tx, lotId, controlPointId);
  return judgeControlPoint(at.point, { readings, endedAt: endedAt ?? at.endedAt ?? undefined, startAt: at.startAt ?? undefined, now }).judged;
}
