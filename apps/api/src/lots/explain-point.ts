import type { PointExplained } from '@larderbook/contracts';
import { sayLimit, type SayTime } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { explainLimits } from './explain-limits';
import { explainCurve } from './explain-curve';
import { judgePoints } from './judge-points';
import { readLots } from './lot-rows';

/** How one control point of a lot was judged, as it stands at `now`. Throws `not-found`. */
export async function explainPoint(
  tx: Tx,
  { lotId, controlPointId }: { lotId: string; controlPointId: string },
  by: Person,
  now: Date,
): Promise<PointExplained> {
  const [rows] = await readLots(tx, [lotId]);
  if (!rows) throw new Problem('not-found', { detail: 'There is no such lot in this shop.' });
  const found = judgePoints(rows, now).find(({ point }) => point.controlPointId === controlPointId);
  if (!found) throw new Problem('not-found', { detail: 'The plan of this lot has no such control point.' });

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
    limits: explainLimits(found, sayTimeIn(by.establishment)),
    series: explainCurve(found, rows),
  };
}

/** An instant on the clock of the shop as the screens show it: "14:05". */
function sayTimeIn({ timeZone }: Person['establishment']): SayTime {
  const format = new Intl.DateTimeFormat('en-GB', { timeStyle: 'short', timeZone });
  return (at) => format.format(at);
}
