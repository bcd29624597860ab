import type { CurveFinding } from '@larderbook/contracts';
import { doubtsIn } from '@larderbook/haccp';
import { contextOf } from './judge-control-point';
import type { PointOnLot } from './judge-points';
import { seriesAt } from './judge-reading';

/**
 * What was found in the readings of a control point that is neither met nor settled, and that a person can clear up by saying what the
 * readings were. Undefined where there is nothing.
 */
export function doubtsAt({ point, isSettled, records }: PointOnLot): CurveFinding[] | undefined {
  if (point.takenAs !== 'curve' || isSettled) return undefined;
  const doubts = doubtsIn(seriesAt(records.readings), contextOf(records));
  return doubts.length > 0 ? doubts : undefined;
}
