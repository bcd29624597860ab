import type { InstrumentData } from '@larderbook/documents';
import { Prisma } from '../generated/prisma/client';
import { madeBy, personNames } from '../people/person-names';
import type { Tx } from '../platform/database';

/** What the values of a lot were measured with. */
export const instrumentsOfLot = (tx: Tx, lotId: string): Promise<InstrumentData[]> =>
  used(
    tx,
    Prisma.sql`
    SELECT instrument_id, flags FROM reading WHERE lot_id = ${lotId}::uuid
    UNION ALL SELECT instrument_id, flags FROM weighing WHERE lot_id = ${lotId}::uuid`,
  );

/** What the values of a control point were measured with in a period. */
export const instrumentsAt = (tx: Tx, controlPointId: string, from: Date, until: Date): Promise<InstrumentData[]> =>
  used(
    tx,
    Prisma.sql`
    SELECT instrument_id, flags FROM reading
      WHERE control_point_id = ${controlPointId}::uuid AND taken_at >= ${from} AND taken_at < ${until}
    UNION ALL
    SELECT instrument_id, flags FROM weighing
      WHERE control_point_id = ${controlPointId}::uuid AND taken_at >= ${from} AND taken_at < ${until}`,
  );

/** Each instrument once, with its newest check and whether it was overdue at any of the uses. */
async function used(tx: Tx, uses: Prisma.Sql): Promise<InstrumentData[]> {
  const rows = await tx.$queryRaw<{ id: string; overdue: boolean }[]>`
    SELECT instrument_id AS id, bool_or('instrument-overdue' = ANY(flags)) AS overdue
    FROM (${uses}) uses WHERE instrument_id IS NOT NULL GROUP BY instrument_id`;
  const overdue = new Map(rows.map((row) => [row.id, row.overdue]));
  const instruments = await tx.instrument.findMany({
    where: { id: { in: [...overdue.keys()] } },
    include: { calibrations: { orderBy: [{ takenAt: 'desc' }, { recordedAt: 'desc' }], take: 1 } },
    orderBy: { name: 'asc' },
  });
  const names = await personNames(tx);
  return instruments.map(({ id, name, kind, tolerance, calibrations: [last] }) => ({
    name,
    kind,
    calibrated: last && {
      by: madeBy(last, names).name,
      at: last.takenAt.getTime(),
      enteredAt: last.recordedAt.getTime(),
      result: resultOf({ ...last, tolerance }),
    },
    overdue: overdue.get(id) ? 'overdue for its check when it was used' : undefined,
  }));
}

type Check = { method: string; unit: string } & Record<'tolerance' | 'observed' | 'expected', Prisma.Decimal>;

function resultOf({ method, unit, observed, expected, tolerance }: Check): string {
  const within = observed.minus(expected).abs().lte(tolerance) ? 'within' : 'not within';
  return `${method}: reads ${observed} ${unit} where ${expected} ${unit} is right, ${within} ± ${tolerance} ${unit}`;
}
