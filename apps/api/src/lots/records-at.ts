import { isOfSurroundings, ofProduct, type ControlPoint } from '@larderbook/contracts';
import { usualPiece } from '@larderbook/haccp';
import type { PointRecords } from './judge-control-point';
import type { LotRows, ReadingOnLot } from './lot-rows';
import { surroundingsAt } from './surroundings-at';

/** Where a moment is recorded by an answer, the earliest yes: a clock never starts later than somebody said. */
const momentAt = (controlPointId: string | undefined, readings: readonly ReadingOnLot[]): Date | undefined =>
  readings.find((reading) => reading.controlPointId === controlPointId && reading.answer === true)?.takenAt;

/** What counts at one control point. @param readings those of the lot that count */
export function recordsAt(
  point: ControlPoint,
  readings: readonly ReadingOnLot[],
  { stageEnds, wentIn, product }: Pick<LotRows, 'stageEnds' | 'wentIn' | 'product'>,
  now?: Date,
): PointRecords {
  const endOf = (controlPointId: string | undefined) =>
    stageEnds.find((end) => end.controlPointId === controlPointId)?.takenAt;
  const here = readings.filter(({ controlPointId }) => controlPointId === point.controlPointId);
  const surroundings = here.filter((reading) => isOfSurroundings(point, reading));
  return {
    readings: ofProduct(point, here),
    surroundings,
    liesIn: surroundingsAt(point, surroundings),
    piece: point.piece ?? usualPiece(product.productClass),
    endedAt: endOf(point.controlPointId),
    startAt: endOf(point.follows) ?? momentAt(point.follows, readings),
    wentIn,
    now,
    errors: point.errors,
  };
}
