import { asksForHumidity, startedBy, type Judged } from '@larderbook/contracts';
import { judgeControlPoint } from '../lots/judge-control-point';
import { wentInFor } from '../lots/judge-formulation';
import { judgePoints } from '../lots/judge-points';
import { readLots } from '../lots/lot-rows';
import { lotToRecordOn } from '../lots/lot-to-record-on';
import type { JudgedAt } from '../lots/open-for-misses';
import type { Tx } from '../platform/database';
import { clockOf, lotAtPoint } from './readings.queries';

/** A late entry of an end or a start may show that what follows was too slow. */
export async function judgeFollowers(tx: Tx, lotId: string, endedId: string, now: Date): Promise<JudgedAt[]> {
  const { controlPoints } = await lotToRecordOn(tx, lotId);
  const judgedAt: JudgedAt[] = await judgeHumidityAfter(tx, lotId, endedId);
  for (const point of startedBy(endedId, controlPoints)) {
    judgedAt.push({ point, judged: await judgeCurveAt(tx, lotId, point.controlPointId, now) });
  }
  return judgedAt;
}

/** Answers on humidity may come before the cook ends. */
async function judgeHumidityAfter(tx: Tx, lotId: string, endedId: string): Promise<JudgedAt[]> {
  const { controlPoints } = await lotToRecordOn(tx, lotId);
  if (!controlPoints.some((point) => point.follows === endedId && asksForHumidity(point))) return [];
  const [rows] = await readLots(tx, [lotId]);
  return (rows ? judgePoints(rows) : []).filter(
    ({ point, stands }) => point.follows === endedId && asksForHumidity(point) && stands !== 'not-started',
  );
}

/** `end` judges the curve as it will be once it is finished. */
export async function judgeCurveAt(tx: Tx, lotId: string, controlPointId: string, now: Date, end?: Date): Promise<Judged[]> {
  const lot = await lotAtPoint(tx, lotId, controlPointId);
  const { point, piece, curve: readings } = lot;
  const clock = clockOf({ ...lot, endedAt: end ?? lot.endedAt }, now);
  const wentIn = await wentInFor(tx, lotId, point);
  return judgeControlPoint(point, { readings, wentIn, piece, ...clock }).judged;
}
