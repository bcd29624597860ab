import { Injectable } from '@nestjs/common';
import type { ControlPoint, endStage, InputOf, ReplyOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { openForMisses } from '../lots/open-for-misses';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { judgeCurveAt, judgeFollowers } from './judge-followers';
import { lotAtPoint } from './readings.queries';

type Input = InputOf<typeof endStage>;

/** A cook or a chill is finished: its limits are judged as a whole, and those of the stage whose clock it starts. */
@Injectable()
export class EndStage {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof endStage>> {
    const { stageEndId, lotId, controlPointId } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(by, { id: stageEndId, kind: 'stage-end', subject: lotId, request: input }, async (tx, at) => {
      const point = await pointToEnd(tx, lotId, controlPointId);
      const judged = await judgeCurveAt(tx, lotId, controlPointId, at, takenAt);
      const entry = { id: stageEndId, lotId, controlPointId, judged, takenAt, station: by.station };
      await tx.stageEndRow.create({ data: { ...keptBy(by, at), ...entry } });

      const judgedAt = [{ point, judged }, ...(await judgeFollowers(tx, lotId, controlPointId, at))];
      const deviationId = await openForMisses(tx, { lotId, subjectId: stageEndId, takenAt }, judgedAt, by, at);
      const verdicts = judged.map(({ limitId, verdict }) => ({ limitId, verdict }));
      return { stageEndId, controlPointId, verdicts, deviationId };
    });
  }
}

async function pointToEnd(tx: Tx, lotId: string, controlPointId: string): Promise<ControlPoint> {
  const { point, endedAt } = await lotAtPoint(tx, lotId, controlPointId);
  if (point.takenAs !== 'curve') {
    const detail = `${point.name} is not a series of readings; there is nothing to finish.`;
    throw new Problem('wrong-kind-of-value', { detail });
  }
  if (endedAt) {
    const detail = `${point.name} was finished at ${endedAt.toISOString()}.`;
    throw new Problem('stage-ended-already', { detail });
  }
  return point;
}
