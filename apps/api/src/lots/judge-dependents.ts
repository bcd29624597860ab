import type { ControlPoint } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import { asksForFormulation } from './judge-formulation';
import { judgePoints } from './judge-points';
import { readLots } from './lot-rows';
import type { JudgedAt } from './open-for-misses';

/** Points with readings are judged again where they depend on what went in. */
export async function judgeDependents(tx: Tx, lotId: string, points: readonly ControlPoint[]): Promise<JudgedAt[]> {
  const depending = points.filter(({ takenAs, ...point }) => takenAs !== 'weighings' && asksForFormulation(point));
  if (depending.length === 0) return [];
  const [rows] = await readLots(tx, [lotId]);
  const ids = new Set(depending.map(({ controlPointId }) => controlPointId));
  const judged = rows ? judgePoints(rows) : [];
  return judged.filter(({ point, stands }) => ids.has(point.controlPointId) && stands !== 'not-started');
}
