import type { PointExplained } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { limitsIn } from '../platform/tell';
import { told } from '../platform/told';
import { explainLimits } from './explain-limits';
import { explainCurve } from './explain-curve';
import { judgePoints } from './judge-points';
import { readLots } from './lot-rows';

/** Throws `not-found`. */
export async function explainPoint(
  tx: Tx,
  { lotId, controlPointId }: { lotId: string; controlPointId: string },
  by: Person,
  now: Date,
): Promise<PointExplained> {
  const [rows] = await readLots(tx, [lotId]);
  if (!rows) throw new Problem('not-found', told('no-such-lot'));
  const found = judgePoints(rows, now).find(({ point }) => point.controlPointId === controlPointId);
  if (!found) throw new Problem('not-found', told('point-not-in-plan'));

  const { sayLimit } = limitsIn(by.voice);
  const { point, stands, endedAt } = found;
  return {
    lotId,
    lotCode: rows.code,
    productName: rows.product.name,
    controlPointId,
    name: point.name,
    takenAs: point.takenAs,
    stands,
    endedAt: endedAt?.toISOString(),
    asked: point.limits.map(({ limitId, limit }) => ({ limitId, said: sayLimit(limit), source: limit.source })),
    limits: explainLimits(found),
    series: explainCurve(found, rows),
  };
}
