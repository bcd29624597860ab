import { listPeople } from '../shop/people.queries';
import type { Tx } from '../platform/database';

export type Recorder = { personId: string; name: string };

/** Includes whoever recorded a corrective action on the lot. */
export const recordersOf = (tx: Tx, lotId: string): Promise<Recorder[]> =>
  tx.$queryRaw<Recorder[]>`
    SELECT p.id AS "personId", p.name FROM person p WHERE p.id IN (
      SELECT recorded_by FROM lot WHERE id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM lot_input WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM weighing WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM reading WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM clarification WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM stage_end WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM removal WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT recorded_by FROM packing WHERE lot_id = ${lotId}::uuid
      UNION ALL SELECT a.recorded_by FROM deviation d JOIN corrective_action a ON a.deviation_id = d.id
        WHERE d.lot_id = ${lotId}::uuid)
    ORDER BY p.name, p.id`;

/** Inspectors do not count, because they only look. */
export async function isOnePersonShop(tx: Tx): Promise<boolean> {
  const people = await listPeople(tx);
  return people.filter(({ roles }) => roles.some((role) => role !== 'inspector')).length === 1;
}
