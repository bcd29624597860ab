import { asksForHumidity, type ControlPoint, type Judged } from '@larderbook/contracts';
import { cookSeen } from '../lots/cook-seen';
import { judgeReading } from '../lots/judge-reading';
import { readLots } from '../lots/lot-rows';
import type { Tx } from '../platform/database';
import type { Logged } from './logged-rows.queries';

/** An answer on humidity is judged by its cook, which may end later. Other entries keep their first verdict. */
export async function judgedNow(tx: Tx, point: ControlPoint, entries: readonly Logged[]): Promise<(entry: Logged) => Judged[]> {
  if (!asksForHumidity(point) || entries.length === 0) return ({ judged }) => judged;
  const lots = await readLots(tx, [...new Set(entries.map(({ lotId }) => lotId))]);
  const again = lots.flatMap((rows) => {
    const cook = cookSeen(point, rows);
    return rows.readings.map((reading) => [reading.id, () => judgeReading(point, reading, cook)] as const);
  });
  const byId = new Map(again);
  return ({ id, judged }) => byId.get(id)?.() ?? judged;
}
