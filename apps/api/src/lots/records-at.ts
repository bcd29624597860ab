import { clockStart, isOfSurroundings, ofProduct, startsAt, type ControlPoint } from '@larderbook/contracts';
import { usualPiece } from '@larderbook/haccp';
import type { PointRecords } from './judge-control-point';
import type { LotRows, ReadingOnLot } from './lot-rows';
import { surroundingsAt } from './surroundings-at';

/** @param readings those of the lot that count */
export function recordsAt(
  point: ControlPoint,
  readings: readonly ReadingOnLot[],
  { stageEnds, wentIn, product, content }: Pick<LotRows, 'stageEnds' | 'wentIn' | 'product' | 'content'>,
  now?: Date,
): PointRecords {
  const endOf = (controlPointId: string | undefined) => stageEnds.find((end) => end.controlPointId === controlPointId)?.takenAt;
  const here = readings.filter(({ controlPointId }) => controlPointId === point.controlPointId);
  const clock = clockStart(point, content.controlPoints);
  const answered = readings.filter(({ controlPointId, answer }) => answer && controlPointId === clock.answer?.controlPointId);
  const { startAt, chillingBegan } = startsAt(clock, endOf(clock.stage?.controlPointId)?.getTime(), answered.map(momentOf));
  const surroundings = here.filter((reading) => isOfSurroundings(point, reading));
  return {
    readings: ofProduct(point, here),
    surroundings,
    liesIn: surroundingsAt(point, surroundings),
    piece: point.piece ?? usualPiece(product.productClass),
    endedAt: endOf(point.controlPointId),
    startAt: startAt === undefined ? undefined : new Date(startAt),
    chillingBegan,
    wentIn,
    now,
    errors: point.errors,
  };
}

const momentOf = ({ takenAt, arrivedAt }: ReadingOnLot) => ({ at: takenAt.getTime(), arrivedAt: arrivedAt?.getTime() });
