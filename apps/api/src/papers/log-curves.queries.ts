import type { ControlPoint } from '@larderbook/contracts';
import type { Tell, Told } from '@larderbook/haccp';
import { toldWorst } from './told-worst';
import { whereLotsStand } from '../lots/where-a-lot-stands';
import type { Tx } from '../platform/database';
import type { Logged } from './logged-rows.queries';

/** A finished curve is judged as a whole, at its last reading, whose id is the key. */
export async function verdictsOfCurves(
  tx: Tx,
  point: ControlPoint,
  entries: readonly Logged[],
  { now, tell }: { now: Date; tell: Tell },
): Promise<ReadonlyMap<string, Told>> {
  if (point.takenAs !== 'curve' || entries.length === 0) return new Map();
  const lotIds = [...new Set(entries.map(({ lotId }) => lotId))];
  const last = await tx.$queryRaw<{ lotId: string; id: string }[]>`
    SELECT DISTINCT ON (r.lot_id) r.lot_id AS "lotId", r.id FROM reading_now r
    WHERE r.lot_id = ANY(${lotIds}::uuid[]) AND r.control_point_id = ${point.controlPointId}::uuid
      AND r.probe IS DISTINCT FROM ${point.surroundings?.name ?? null}::text
    ORDER BY r.lot_id, r.taken_at DESC, r.id DESC`;
  const stands = await whereLotsStand(tx, lotIds, now);
  return new Map(
    last.flatMap(({ lotId, id }) => {
      const curve = stands.get(lotId)?.points.find((one) => one.point.controlPointId === point.controlPointId);
      if (!curve?.endedAt || curve.judged.length === 0) return [];
      return [[id, toldWorst(curve.judged, tell) as Told]];
    }),
  );
}
