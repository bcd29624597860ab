import { isOfSurroundings, ofProduct, type ControlPoint } from '@larderbook/contracts';
import type { PointRecords } from './judge-control-point';
import type { LotRows, ReadingOnLot } from './lot-rows';

/** Where a moment is recorded by an answer, the earliest yes: a clock never starts later than somebody said. */
const momentAt = (controlPointId: string | undefined, readings: readonly ReadingOnLot[]): Date | undefined =>
  readings.find((reading) => reading.controlPointId === controlPointId && reading.answer === true)?.takenAt;

/** What counts at one control point. @param readings those of the lot that count */
export function recordsAt(
  point: ControlPoint,
  readings: readonly ReadingOnLot[],
  { stageEnds, wentIn }: Pick<LotRows, 'stageEnds' | 'wentIn'>,
  now?: Date,
): PointRecords {
  const endOf = (controlPointId: string | undefined) =>
    stageEnds.find((end) => end.controlPointId === controlPointId)?.takenAt;
  const here = readings.filter(({ controlPointId }) => controlPointId === point.controlPointId);
  return {
    readings: ofProduct(point, here),
    surroundings: here.filter((reading) => isOfSurroundings(point, reading)),
    endedAt: endOf(point.controlPointId),
    startAt: endOf(point.follows) ?? momentAt(point.follows, readings),
    wentIn,
    now,
    errors: point.errors,
  };
}
