import type { CurveFinding } from '@larderbook/contracts';
import { doubtsIn } from '@larderbook/haccp';
import { contextOf } from './judge-control-point';
import type { PointOnLot } from './judge-points';
import { seriesAt } from './judge-reading';

/** A person can clear these up by saying what the readings were. */
export function doubtsAt({ point, isSettled, records }: PointOnLot): CurveFinding[] | undefined {
  if (point.takenAs !== 'curve' || isSettled) return undefined;
  const doubts = doubtsIn(seriesAt(records.readings), contextOf(records));
  return doubts.length > 0 ? doubts : undefined;
}
