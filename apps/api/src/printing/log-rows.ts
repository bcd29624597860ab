import { flagWords, isOfSurroundings, type ControlPoint, type Judged } from '@larderbook/contracts';
import type { CheckNotDoneData, JudgedCurveData, MonitoredReadingData, MonitoringRowData } from '@larderbook/documents';
import { isTwoTimes, sayLimit, sayRead, worstVerdict, type MassUnit, type Verdict } from '@larderbook/haccp';
import type { Look } from '../ledger/entries';
import { whereLotsStand } from '../lots/where-a-lot-stands';
import { clarificationsOf, saidByReading } from '../lots/clarifications.queries';
import { personNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { productsNow } from '../plan/products-now';
import { amendmentsOf, corrected } from './corrected';
import { clarified } from './clarified';
import { checksNotMade } from './checks-not-made.queries';
import {
  earlierEntries,
  loggedEntries,
  type Cursor,
  type Logged,
  type Stretch,
  type Wanted,
} from './logged-entries.queries';
import { sayNumber } from './deviation-on-paper';
import { ingoingAt } from './ingoing-in-log';
import type { SayTime } from './say-time';

/** How moments are said here, and what the shop weighs meat in. */
type SayHere = SayTime & { mass: MassUnit };

/** The rows of a log in order of time, each batch read in a short look of its own; checks nobody made among them. */
export async function* logRows(
  look: Look,
  stretch: Stretch,
  say: SayHere,
  now: Date,
  batch = 400,
): AsyncGenerator<MonitoringRowData> {
  const missing = await look((tx) => checksNotMade(tx, stretch));
  let after: Cursor | undefined;
  for (;;) {
    const entries = await look((tx) => readBatch(tx, { ...stretch, after, most: batch }, say, now));
    for (const { row, curve, cursor } of entries) {
      yield* takeBefore(missing, row.at);
      yield row;
      if (curve) yield curve;
      after = cursor;
    }
    if (entries.length < batch) break;
  }
  yield* missing;
}

/** Takes from the front of the list what was due before an instant. */
function* takeBefore(missing: CheckNotDoneData[], at: number): Generator<CheckNotDoneData> {
  while (missing[0] && missing[0].dueAt <= at) yield missing.shift() as CheckNotDoneData;
}

/** A reading; and after the last one of a curve, what the whole was judged. */
type Entry = { row: MonitoredReadingData; curve?: JudgedCurveData; cursor: Cursor };

async function readBatch(tx: Tx, wanted: Wanted, { instant, mass }: SayHere, now: Date): Promise<Entry[]> {
  const { point } = wanted;
  const names = await personNames(tx);
  const counting = await loggedEntries(tx, wanted, names);
  const earlier = await earlierEntries(tx, point, counting, names);
  const history = new Set(earlier.map(({ id }) => id));
  const products = await productsNow(tx, [...new Set(counting.map(({ productId }) => productId))]);
  const instruments = await instrumentNames(tx, counting);
  const curves = await verdictsOfCurves(tx, point, counting, now);
  const numberOf = await deviationNumbers(tx, point, counting);
  const ingoing = await ingoingAt(tx, point, counting, { unit: mass, now });
  const lotIds = [...new Set(counting.map(({ lotId }) => lotId))];
  const saidOf = saidByReading(await clarificationsOf(tx, lotIds), names);

  const all = [...earlier, ...counting].map((entry) => ({
    ...entry,
    amendedBy: history.has(entry.id) ? 'later' : undefined,
  }));
  return corrected(all, ({ id }) => id).map((one) => {
    const { entry } = one;
    const row = { ...rowOf(entry, point), ...ingoing(entry), product: products.get(entry.productId)?.name };
    const verdict = curves.get(entry.id);
    return {
      cursor: { at: new Date(entry.made.at), id: entry.id },
      curve: verdict && curveOf(row, verdict, numberOf(entry)),
      row: {
        ...row,
        instrument: instruments.get(entry.instrumentId ?? ''),
        deviation: row.verdict?.kind === 'missed' ? numberOf(entry) : undefined,
        ...clarified(saidOf.get(entry.id)),
        amendments: amendmentsOf(one, {
          value: sayValue,
          'time taken': ({ made }) => instant(Date.parse(made.at)),
        }),
      },
    };
  });
}

const curveOf = (
  { at, lot, product, limit }: MonitoredReadingData,
  verdict: Verdict,
  number: string | undefined,
): JudgedCurveData => ({
  kind: 'curve',
  at,
  lot,
  product,
  limit,
  verdict,
  deviation: verdict.kind === 'missed' ? number : undefined,
});

function rowOf(entry: Logged, point: ControlPoint): MonitoredReadingData {
  const { value, unit, what, probe, seen, lotCode, judged, flags, made } = entry;
  const isLate = isTwoTimes({ at: Date.parse(made.at), enteredAt: Date.parse(made.recordedAt) });
  const limits = judged.length > 0 ? judged.map(({ limit }) => limit) : point.limits.map(({ limit }) => limit);
  return {
    kind: 'reading',
    lot: lotCode,
    value,
    unit,
    what,
    probe,
    note: seen,
    limit: limits.map((limit) => sayLimit(limit, unit === '°C' ? '°C' : '°F')).join('; '),
    verdict: point.takenAs === 'curve' ? undefined : worstOf(judged),
    isOfCurve: (point.takenAs === 'curve' && !isOfSurroundings(point, { probe: probe ?? '' })) || undefined,
    flags: flags.filter((flag) => flag !== 'recorded-late').map((flag) => flagWords[flag]),
    receivedAt: isLate ? Date.parse(made.recordedAt) : undefined,
    by: made.name,
    initials: initialsOf(made.name),
    at: Date.parse(made.at),
  };
}

const worstOf = (judged: readonly Judged[]): Verdict | undefined =>
  judged.length > 0 ? worstVerdict(judged.map(({ verdict }) => verdict)) : undefined;

const sayValue = ({ value, unit, seen }: Logged): string =>
  [sayRead({ value, unit }), unit ? '' : seen].filter(Boolean).join(' ');

const initialsOf = (name: string): string =>
  name
    .split(/\s+/)
    .map((part) => part[0] ?? '')
    .join('')
    .toUpperCase();

async function instrumentNames(tx: Tx, entries: readonly Logged[]): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(entries.flatMap(({ instrumentId }) => instrumentId ?? []))];
  const found = await tx.instrument.findMany({ where: { id: { in: ids } }, select: { id: true, name: true } });
  return new Map(found.map(({ id, name }) => [id, name]));
}

/** A curve is judged as a whole: once it was finished its verdict stands at its last reading. By that reading's id. */
async function verdictsOfCurves(
  tx: Tx,
  point: ControlPoint,
  entries: readonly Logged[],
  now: Date,
): Promise<ReadonlyMap<string, Verdict>> {
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
      const verdict = curve?.endedAt && worstOf(curve.judged);
      return verdict ? [[id, verdict]] : [];
    }),
  );
}

/** The deviation that answers a row: the one it opened, else the latest of its lot at this control point. */
async function deviationNumbers(
  tx: Tx,
  { controlPointId }: ControlPoint,
  entries: readonly Logged[],
): Promise<(entry: Logged) => string | undefined> {
  const found = await tx.deviation.findMany({
    where: { controlPointId, lotId: { in: [...new Set(entries.map(({ lotId }) => lotId))] } },
    select: { number: true, subjectId: true, lotId: true },
    orderBy: { number: 'desc' },
  });
  return (entry) => {
    const own = found.filter(({ lotId }) => lotId === entry.lotId);
    const deviation = own.find(({ subjectId }) => subjectId === entry.id) ?? own[0];
    return deviation && sayNumber(deviation);
  };
}
