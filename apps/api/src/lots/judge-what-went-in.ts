import type { ControlPoint } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { judgeWeighings } from './judge-weighings';
import { causeOnLot, openForMisses } from './open-for-misses';
import { wentInto } from './what-went-in';

type Change = { lotId: string; points: readonly ControlPoint[]; subjectId: string; takenAt: Date };

/** After something went into a lot: every substance that its plan restricts, judged again. The first deviation that opened. */
export async function judgeWhatWentIn(tx: Tx, { points, ...change }: Change, by: Person, at: Date) {
  const wentIn = await wentInto(tx, change.lotId);
  let deviationId: string | undefined;
  for (const point of points.filter(({ takenAs }) => takenAs === 'weighings')) {
    const judged = judgeWeighings(point, wentIn);
    const opened = await openForMisses(tx, { ...change, point, judged, causeOf: causeOnLot(change.lotId, point.controlPointId) }, by, at);
    deviationId ??= opened;
  }
  return { wentIn, deviationId };
}
