import type { InputOf, recordShipment } from '@larderbook/contracts';
import { sayTimeIn } from '../lots/say-time-in';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';

type Input = InputOf<typeof recordShipment>;

/**
 * Nor before its packages were packed, by the earlier of when that is said to have been and when it was entered. Throws
 * `not-cleared-then`.
 */
async function checkPackedThen(tx: Tx, ids: string[], left: Date, by: Person): Promise<void> {
  const [late] = await tx.$queryRaw<{ code: string; at: Date }[]>`
    SELECT p.code, least(p.taken_at, p.recorded_at) AS at FROM packing_now p
    WHERE p.id = ANY(${ids}::uuid[]) AND least(p.taken_at, p.recorded_at) > ${left} ORDER BY 2 LIMIT 1`;
  if (!late) return;
  const say = sayTimeIn(by.establishment.timeZone, [left, late.at]);
  const detail = `It is said to have left at ${say(left.getTime())}; ${late.code} was packed at ${say(late.at.getTime())}.`;
  throw new Problem('not-cleared-then', { detail, errors: [{ pointer: '#/takenAt', detail }] });
}

/**
 * A load cannot have left before the review that cleared it was signed. To ship is a decision and not a measurement, so
 * the time is asked for again: throws `not-cleared-then`. A corrected shipment is held to the review it left under.
 */
export async function checkClearedThen(tx: Tx, { lines, takenAt }: Input, by: Person, firstId?: string): Promise<void> {
  const ids = lines.map(({ packingId }) => packingId);
  const signed = await tx.$queryRaw<{ code: string; at: Date }[]>`
    SELECT l.code, coalesce(max(v.recorded_at) FILTER (WHERE a.seq < f.seq), max(v.recorded_at)) AS at
    FROM packing_now p JOIN lot l ON l.id = p.lot_id
    JOIN review v ON v.lot_id = l.id JOIN acknowledgement a ON a.id = v.id
    LEFT JOIN acknowledgement f ON f.id = ${firstId ?? null}::uuid
    WHERE p.id = ANY(${ids}::uuid[]) GROUP BY l.code`;
  const left = new Date(takenAt);
  await checkPackedThen(tx, ids, left, by);
  const late = signed.filter(({ at }) => left < at);
  const [first] = late;
  if (!first) return;
  const say = sayTimeIn(by.establishment.timeZone, [left, ...late.map(({ at }) => at)]);
  const lots = late.map(({ code, at }) => `the review of lot ${code} was signed at ${say(at.getTime())}`).join(', and ');
  const detail = `It is said to have left at ${say(left.getTime())}; ${lots}.`;
  throw new Problem('not-cleared-then', { detail, errors: [{ pointer: '#/takenAt', detail }] });
}
