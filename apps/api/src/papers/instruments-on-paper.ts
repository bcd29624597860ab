import type { InputOf, instrumentKinds, recordCalibration } from '@larderbook/contracts';
import type { CheckData, InstrumentData } from '@larderbook/documents';
import { codeOf } from '@larderbook/messages';
import { Prisma } from '../generated/prisma/client';
import { madeBy, personNames, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import type { Telling } from './telling';

export const instrumentsOfLot = (tx: Tx, lotId: string, telling: Said): Promise<InstrumentData[]> =>
  used(tx, Prisma.sql`WHERE lot_id = ${lotId}::uuid`, telling);

export const instrumentsAt = (tx: Tx, controlPointId: string, from: Date, until: Date, telling: Said): Promise<InstrumentData[]> =>
  used(tx, Prisma.sql`WHERE control_point_id = ${controlPointId}::uuid AND taken_at >= ${from} AND taken_at < ${until}`, telling);

type Said = Pick<Telling, 'say' | 'of'>;

type Use = {
  id: string;
  name: string;
  kind: (typeof instrumentKinds)[number];
  tolerance: Prisma.Decimal;
  overdue: boolean;
  unchecked: boolean;
};
type CheckRow = {
  instrumentId: string;
  method: InputOf<typeof recordCalibration>['method'];
  unit: string;
  observed: Prisma.Decimal;
  expected: Prisma.Decimal;
  failed: boolean;
  later: boolean;
  takenAt: Date;
  recordedAt: Date;
  recordedBy: string;
  station: string;
};

/**
 * The last check before each use, if known when the use was recorded. A failed check after the last use is shown too.
 */
async function used(tx: Tx, which: Prisma.Sql, telling: Said): Promise<InstrumentData[]> {
  const uses = Prisma.sql`
    SELECT u.instrument_id, u.taken_at, u.flags, c.id AS check_id FROM (
      SELECT instrument_id, taken_at, recorded_at, flags FROM reading_now ${which}
      UNION ALL SELECT instrument_id, taken_at, recorded_at, flags FROM weighing_now ${which}) u
    LEFT JOIN LATERAL (
      SELECT n.id FROM calibration_now n WHERE n.instrument_id = u.instrument_id AND n.taken_at <= u.taken_at
        AND n.first_recorded_at <= u.recorded_at ORDER BY n.taken_at DESC, n.seq DESC LIMIT 1) c ON true
    WHERE u.instrument_id IS NOT NULL`;
  const [instruments, checks] = await Promise.all([
    tx.$queryRaw<Use[]>`
      SELECT i.id, i.name, i.kind, i.tolerance, bool_or('instrument-overdue' = ANY(u.flags)) AS overdue,
        bool_or(u.check_id IS NULL) AS unchecked
      FROM (${uses}) u JOIN instrument i ON i.id = u.instrument_id
      GROUP BY i.id, i.name, i.kind, i.tolerance ORDER BY i.name`,
    tx.$queryRaw<CheckRow[]>`
      WITH u AS (${uses}), span AS (SELECT instrument_id, max(taken_at) AS last FROM u GROUP BY instrument_id)
      SELECT n.instrument_id AS "instrumentId", n.method, n.unit, n.observed, n.expected,
        n.verdict ->> 'kind' IS DISTINCT FROM 'met' AS failed, n.taken_at > span.last AS later,
        n.taken_at AS "takenAt", n.first_recorded_at AS "recordedAt", n.recorded_by AS "recordedBy", n.station
      FROM span JOIN calibration_now n ON n.instrument_id = span.instrument_id
      WHERE n.id IN (SELECT check_id FROM u)
        OR (n.verdict ->> 'kind' IS DISTINCT FROM 'met' AND n.id = (
          SELECT x.id FROM calibration_now x WHERE x.instrument_id = span.instrument_id AND x.taken_at > span.last
          ORDER BY x.taken_at, x.seq LIMIT 1))
      ORDER BY n.taken_at, n.seq`,
  ]);
  const names = await personNames(tx);
  return instruments.map((use) =>
    instrumentOnPaper(
      use,
      checks.filter(({ instrumentId }) => instrumentId === use.id),
      names,
      telling,
    ),
  );
}

function instrumentOnPaper(
  { name, kind, tolerance, overdue, unchecked }: Use,
  all: CheckRow[],
  names: PersonNames,
  { say, of }: Said,
): InstrumentData {
  const shown = all.filter((check, index) => index === 0 || index === all.length - 1 || check.failed || check.later);
  const between = all.length - shown.length;
  return {
    name,
    kind: of('today')(codeOf('instrument', kind)),
    checks: shown.map((check) => checkOnPaper(check, tolerance, names, say)),
    between: between > 0 ? between : undefined,
    flagged: [...(unchecked ? [say('no-check-when-used')] : []), ...(overdue && !unchecked ? [say('overdue-when-used')] : [])],
  };
}

function checkOnPaper(check: CheckRow, tolerance: Prisma.Decimal, names: PersonNames, say: Said['say']): CheckData {
  const { method, unit, observed, expected, failed, later, takenAt, recordedAt } = check;
  const isWithin = observed.minus(expected).abs().lte(tolerance);
  const inUnit = (value: Prisma.Decimal) => `${value.toString()} ${unit}`;
  const read = {
    method: say(codeOf('check', method)),
    observed: inUnit(observed),
    expected: inUnit(expected),
    tolerance: inUnit(tolerance),
  };
  return {
    by: madeBy(check, names).name,
    at: takenAt.getTime(),
    enteredAt: recordedAt.getTime(),
    result: say(isWithin ? 'reads-within' : 'reads-not-within', read),
    failed: failed || undefined,
    later: later || undefined,
  };
}
