import type { Flag, Judged } from '@larderbook/contracts';
import { keptJudged } from '../lots/kept-judged';
import type { Taken } from '../lots/judge-reading';
import type { Tx } from '../platform/database';
import type { keptBy } from '../platform/kept-by';

type Place = { lotId: string; controlPointId: string; planId: string; instrumentId?: string };
type Said = { judged: Judged[]; flags: Flag[]; amendsId?: string; reason: string; station: string };

/** Written in SQL for speed: readings are what a shop records most. */
export async function keepReading(tx: Tx, row: ReturnType<typeof keptBy> & Taken & Place & Said): Promise<void> {
  await tx.$queryRaw`
    INSERT INTO reading (establishment_id, id, lot_id, control_point_id, plan_id, probe, instrument_id, value, unit,
      answer, seen, humidity, judged, amends_id, reason, flags, station, taken_at, recorded_at, recorded_by)
    VALUES (${row.establishmentId}::uuid, ${row.id}::uuid, ${row.lotId}::uuid, ${row.controlPointId}::uuid,
      ${row.planId}::uuid, ${row.probe}, ${row.instrumentId}::uuid, ${row.value}::numeric, ${row.unit}, ${row.answer},
      ${row.seen}, ${row.humidity ? JSON.stringify(row.humidity) : null}::jsonb, ${JSON.stringify(keptJudged(row.judged))}::jsonb, ${row.amendsId}::uuid, ${row.reason}, ${row.flags}::text[],
      ${row.station}, ${row.takenAt}, ${row.recordedAt}, ${row.recordedBy}::uuid)`;
}
