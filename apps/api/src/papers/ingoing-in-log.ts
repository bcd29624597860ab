import type { ControlPoint, Judged } from '@larderbook/contracts';
import type { MonitoredReadingData } from '@larderbook/documents';
import { isOfKind, type MassUnit } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { readLots } from '../lots/lot-rows';
import { whereItStands } from '../lots/where-a-lot-stands';
import type { Tx } from '../platform/database';
import type { Logged } from './logged-rows.queries';
import { formatWeight } from './format-weight';
import type { Telling } from './telling';
import { toldWorst } from './told-worst';

type OfWeighing = Pick<MonitoredReadingData, 'beside'> & Partial<Pick<MonitoredReadingData, 'verdict'>>;

/** The last weighing carries the sum and the verdict of its lot, which change when meat or a weighing is corrected. */
export async function ingoingAt(
  tx: Tx,
  point: ControlPoint,
  entries: readonly Logged[],
  { unit, now, telling }: { unit: MassUnit; now: Date; telling: Telling },
): Promise<(entry: Logged) => OfWeighing> {
  const { say, tell } = telling;
  if (point.takenAs !== 'weighings' || entries.length === 0) return () => ({});
  const lotIds = [...new Set(entries.map(({ lotId }) => lotId))];
  const came = new Map((await readLots(tx, lotIds)).map((rows) => [rows.id, { rows, ...whereItStands(rows, now) }]));
  const last = await lastWeighings(tx, point, lotIds);
  return (entry) => {
    const target = entry.target ? [say('target', { weight: entry.target })] : [];
    const lot = came.get(entry.lotId);
    const judged = lot?.points.find((one) => one.point.controlPointId === point.controlPointId)?.judged ?? [];
    if (!lot || judged.length === 0 || !last.has(entry.id)) return { beside: target };
    const meat = formatWeight(lot.rows.wentIn.composition.meat, unit);
    const amounts = judged.map((one) => sayIngoing(one, telling));
    return { beside: [say('on-meat', { amounts, weight: meat }), ...target], verdict: toldWorst(judged, tell) };
  };
}

function sayIngoing({ limit, verdict }: Judged, { say, tell, limits }: Telling): string {
  const { measured: amount } = tell(verdict, limit);
  return isOfKind(limit, 'concentration')
    ? say('amount-of', { amount, substance: limits.say(codeOf('substance', limit.substance)) })
    : amount;
}

async function lastWeighings(tx: Tx, { controlPointId }: ControlPoint, lotIds: string[]): Promise<ReadonlySet<string>> {
  const rows = await tx.$queryRaw<{ id: string }[]>`
    SELECT DISTINCT ON (w.lot_id) w.id FROM weighing_now w
    WHERE w.lot_id = ANY(${lotIds}::uuid[]) AND w.control_point_id = ${controlPointId}::uuid
    ORDER BY w.lot_id, w.taken_at DESC, w.id DESC`;
  return new Set(rows.map(({ id }) => id));
}
