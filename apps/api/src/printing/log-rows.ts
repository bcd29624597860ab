import { flagWords, type ControlPoint } from '@larderbook/contracts';
import type { CheckNotDoneData, MonitoredReadingData, MonitoringRowData } from '@larderbook/documents';
import { sayLimit, worstVerdict, type Verdict } from '@larderbook/haccp';
import type { Look } from '../ledger/entries';
import { whereLotsStand } from '../lots/where-a-lot-stands';
import { personNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { productsNow } from '../plan/products-now';
import { amendmentsOf, corrected } from './corrected';
import { checksNotMade } from './checks-not-made.queries';
import { earlierEntries, loggedEntries, type Cursor, type Logged, type Stretch } from './logged-entries.queries';
import { sayNumber } from './deviation-on-paper';
import type { SayTime } from './say-time';

const batch = 400;

/** The rows of a log in order of time, read a batch at a time, each in a short look of its own; checks nobody made are among them. */
export async function* logRows(look: Look, stretch: Stretch, time: SayTime, now: Date): AsyncGenerator<MonitoringRowData> {
  const missing = await look((tx) => checksNotMade(tx, stretch));
  let after: Cursor | undefined;
  for (;;) {
    const entries = await look((tx) => readBatch(tx, stretch, after, time, now));
    for (const { row, cursor } of entries) {
      yield* takeBefore(missing, row.at);
      yield row;
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

type Entry = { row: MonitoredReadingData; cursor: Cursor };

async function readBatch(tx: Tx, stretch: Stretch, after: Cursor | undefined, time: SayTime, now: Date): Promise<Entry[]> {
  const { point } = stretch;
  const names = await personNames(tx);
  const counting = await loggedEntries(tx, stretch, after, batch, names);
  const earlier = await earlierEntries(tx, point, counting, names);
  const history = new Set(earlier.map(({ id }) => id));
  const products = await productsNow(tx, [...new Set(counting.map(({ productId }) => productId))]);
  const instruments = await instrumentNames(tx, counting);
  const curves = await verdictsOfCurves(tx, point, counting, now);
  const numbers = await deviationNumbers(tx, counting);

  const all = [...earlier, ...counting].map((entry) => ({ ...entry, amendedBy: history.has(entry.id) ? 'later' : undefined }));
  return corrected(all, ({ id }) => id).map((one) => {
    const { entry } = one;
    const curve = curves.get(entry.id);
    return {
      cursor: { at: new Date(entry.made.at), id: entry.id },
      row: {
        ...rowOf(entry, point),
        product: products.get(entry.productId)?.name,
        instrument: instruments.get(entry.instrumentId ?? ''),
        ...(point.takenAs === 'curve' && { verdict: curve }),
        deviation: numbers(entry, curve),
        amendments: amendmentsOf(one, { value: sayValue, 'time taken': ({ made }) => time.instant(Date.parse(made.at)) }),
      },
    };
  });
}

function rowOf(entry: Logged, point: ControlPoint): MonitoredReadingData {
  const { value, unit, what, probe, seen, lotCode, judged, flags, made } = entry;
  const isLate = flags.includes('recorded-late');
  const limits = judged.length > 0 ? judged.map(({ limit }) => limit) : point.limits.map(({ limit }) => limit);
  return {
    kind: 'reading', lot: lotCode, value, unit, what, probe, note: seen,
    limit: limits.map((limit) => sayLimit(limit, unit === '°C' ? '°C' : '°F')).join('; '),
    verdict: judged.length > 0 ? worstVerdict(judged.map(({ verdict }) => verdict)) : undefined,
    flags: flags.filter((flag) => flag !== 'recorded-late').map((flag) => flagWords[flag]),
    receivedAt: isLate ? Date.parse(made.recordedAt) : undefined,
    by: made.name, initials: initialsOf(made.name), at: Date.parse(made.at),
  };
}

const sayValue = ({ value, unit, seen }: Logged): string => [value, unit, unit ? '' : seen].filter(Boolean).join(' ');

export const initialsOf = (name: string): string => name.split(/\s+/).map((part) => part[0] ?? '').join('').toUpperCase();

async function instrumentNames(tx: Tx, entries: readonly Logged[]): Promise<ReadonlyMap<string, string>> {
  const ids = [...new Set(entries.flatMap(({ instrumentId }) => instrumentId ?? []))];
  const found = await tx.instrument.findMany({ where: { id: { in: ids } }, select: { id: true, name: true } });
  return new Map(found.map(({ id, name }) => [id, name]));
}

/** A curve is judged as a whole: its verdict stands at its last reading, once it was finished. By the id of that reading. */
async function verdictsOfCurves(tx: Tx, point: ControlPoint, entries: readonly Logged[], now: Date): Promise<ReadonlyMap<string, Verdict>> {
  if (point.takenAs !== 'curve' || entries.length === 0) return new Map();
  const lotIds = [...new Set(entries.map(({ lotId }) => lotId))];
  const last = await tx.$queryRaw<{ lotId: string; id: string }[]>`
    SELECT DISTINCT ON (r.lot_id) r.lot_id AS "lotId", r.id FROM reading r
    WHERE r.lot_id = ANY(${lotIds}::uuid[]) AND r.control_point_id = ${point.controlPointId}::uuid
      AND NOT EXISTS (SELECT FROM reading a WHERE a.amends_id = r.id)
    ORDER BY r.lot_id, r.taken_at DESC, r.id DESC`;
  const stands = await whereLotsStand(tx, lotIds, now);
  return new Map(last.flatMap(({ lotId, id }) => {
    const curve = stands.get(lotId)?.points.find((one) => one.point.controlPointId === point.controlPointId);
    return curve?.endedAt && curve.judged.length > 0 ? [[id, worstVerdict(curve.judged.map(({ verdict }) => verdict))]] : [];
  }));
}

/** The deviation that answers a row: the one it opened itself, or that of its curve. */
async function deviationNumbers(tx: Tx, entries: readonly Logged[]): Promise<(entry: Logged, curve: Verdict | undefined) => string | undefined> {
  const lotIds = [...new Set(entries.map(({ lotId }) => lotId))];
  const found = await tx.deviation.findMany({ where: { lotId: { in: lotIds } }, select: { number: true, subjectId: true, lotId: true, cause: true, controlPointId: true } });
  return (entry, curve) => {
    const own = found.filter(({ lotId }) => lotId === entry.lotId);
    const direct = own.find(({ subjectId, cause }) => subjectId === entry.id || cause.startsWith(`reading:${entry.id}:`));
    const number = direct ?? (curve?.kind === 'missed' ? own[0] : undefined);
    return number && sayNumber(number);
  };
}
