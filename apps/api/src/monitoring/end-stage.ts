import { Injectable } from '@nestjs/common';
import type { ControlPoint, endStage, InputOf, ReplyOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect, type Amending } from '../ledger/row-to-correct';
import { keptJudged } from '../lots/kept-judged';
import { openForMisses } from '../lots/open-for-misses';
import type { Tx } from '../platform/database';
import { keptBy } from '../platform/kept-by';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { judgeCurveAt, judgeFollowers } from './judge-followers';
import { lotAtPoint } from './readings.queries';

type Input = InputOf<typeof endStage>;

/** Judges its own limits as a whole, and the stages whose clock it starts. */
@Injectable()
export class EndStage {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof endStage>> {
    const { stageEndId, lotId, controlPointId } = input;
    const takenAt = new Date(input.takenAt);
    return this.once.run(
      by,
      { id: stageEndId, kind: 'stage-end', subject: lotId, request: input, happenedAt: input.takenAt },
      async (tx, at) => {
        const amending = await stageToEnd(tx, input);
        const { point } = await lotAtPoint(tx, lotId, controlPointId);
        checkIsCurve(point);
        const judged = await judgeCurveAt(tx, lotId, controlPointId, at, takenAt);
        const entry = { id: stageEndId, lotId, controlPointId, judged: keptJudged(judged), takenAt, station: by.station, ...amending };
        await tx.stageEndRow.create({ data: { ...keptBy(by, at), ...entry } });

        const judgedAt = [{ point, judged }, ...(await judgeFollowers(tx, lotId, controlPointId, at))];
        const deviationId = await openForMisses(tx, { lotId, subjectId: stageEndId, takenAt }, judgedAt, by, at);
        const verdicts = judged.map(({ limitId, verdict }) => ({ limitId, verdict }));
        return { stageEndId, controlPointId, verdicts, deviationId };
      },
    );
  }
}

/**
 * A stage finished anew after a voided end amends that end, and no person gives a reason. Throws
 * `stage-ended-already`, and what `rowToCorrect` throws.
 */
async function stageToEnd(tx: Tx, { lotId, controlPointId, amends, reason }: Input): Promise<Amending | undefined> {
  const last = await tx.stageEndRow.findMany({ where: { lotId, controlPointId }, orderBy: { seq: 'desc' } });
  const counts = await tx.stageEnd.findFirst({ where: { lotId, controlPointId } });
  if (amends) {
    if (!last.some(({ id }) => id === amends)) throw new Problem('not-found', told('no-end-to-correct'));
    return rowToCorrect(tx, 'stage_end', { amends, reason });
  }
  if (counts) {
    throw new Problem('stage-ended-already', told('finished-at', { at: { at: counts.takenAt.getTime() } }));
  }
  const voided = last.find(({ id }) => !last.some(({ amendsId }) => amendsId === id));
  return voided && { amendsId: voided.id, firstId: voided.firstId ?? voided.id, amendReason: '' };
}

function checkIsCurve(point: ControlPoint): void {
  if (point.takenAs === 'curve') return;
  throw new Problem('wrong-kind-of-value', told('nothing-to-finish', { point: point.name }));
}
