import { knownFlags, type ControlPoint, type Flag, type Judged } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import { madeBy, type PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { femtograms, massUnit } from '../platform/kept-weight';
import { itemsNow } from '../plan/items-now';
import { sayWeight } from './say-weight';

/** A reading or a weighing at a control point, as a log shows it. */
export type Logged = {
  id: string;
  lotId: string;
  lotCode: string;
  productId: string;
  /** "151.5" and "°F"; an answer has no unit. */
  value: string;
  unit: string;
  seen?: string;
  /** Of a weighing: what was to be weighed. */
  target?: string;
  what?: string;
  probe?: string;
  instrumentId?: string;
  judged: Judged[];
  flags: Flag[];
  made: { name: string; at: string; recordedAt: string };
  amends?: string;
  reason: string;
};
export type Stretch = { point: ControlPoint; from: Date; until: Date };
/** Where the last batch ended; entries are read in order of the moment they were taken. */
export type Cursor = { at: Date; id: string };
export type Wanted = Stretch & { after?: Cursor; most: number };

/** The next entries that count, oldest first; those that a later one corrects are reached through it. */
export async function loggedEntries(
  tx: Tx,
  { point, from, until, after, most }: Wanted,
  names: PersonNames,
): Promise<Logged[]> {
  const table = Prisma.raw(point.takenAs === 'weighings' ? 'weighing_now' : 'reading_now');
  const later = after ? Prisma.sql`AND (e.taken_at, e.id) > (${after.at}, ${after.id}::uuid)` : Prisma.empty;
  const found = await tx.$queryRaw<{ id: string }[]>`
    SELECT e.id FROM ${table} e
    WHERE e.control_point_id = ${point.controlPointId}::uuid
      AND e.taken_at >= ${from} AND e.taken_at < ${until} ${later}
    ORDER BY e.taken_at, e.id LIMIT ${most}`;
  return entriesById(
    tx,
    point,
    found.map(({ id }) => id),
    names,
  );
}

/** Every entry that these correct, directly or through others. */
export async function earlierEntries(
  tx: Tx,
  point: ControlPoint,
  entries: readonly Logged[],
  names: PersonNames,
): Promise<Logged[]> {
  const amended = entries.flatMap(({ amends }) => amends ?? []);
  if (amended.length === 0) return [];
  const earlier = await entriesById(tx, point, amended, names);
  return [...(await earlierEntries(tx, point, earlier, names)), ...earlier];
}

async function entriesById(tx: Tx, point: ControlPoint, ids: string[], names: PersonNames): Promise<Logged[]> {
  return point.takenAs === 'weighings' ? weighingsById(tx, ids, names) : readingsById(tx, ids, names);
}

const withLot = { lot: { select: { code: true, productId: true } } } as const;
const inOrder = [{ takenAt: 'asc' as const }, { id: 'asc' as const }];

async function readingsById(tx: Tx, ids: string[], names: PersonNames): Promise<Logged[]> {
  const rows = await tx.reading.findMany({ where: { id: { in: ids } }, include: withLot, orderBy: inOrder });
  return rows.map((row) => ({
    ...commonOf(row, names),
    value: row.value === null ? (row.answer ? 'yes' : 'no') : row.value.toString(),
    unit: row.unit ?? '',
    seen: row.seen || undefined,
    probe: row.probe || undefined,
  }));
}

async function weighingsById(tx: Tx, ids: string[], names: PersonNames): Promise<Logged[]> {
  const rows = await tx.weighing.findMany({ where: { id: { in: ids } }, include: withLot, orderBy: inOrder });
  const items = await itemsNow(tx, [...new Set(rows.map(({ itemId }) => itemId))]);
  return rows.map((row) => ({
    ...commonOf(row, names),
    value: row.weightValue.toString(),
    unit: row.weightUnit,
    what: items.get(row.itemId)?.name,
    target: row.targetGrams ? sayWeight(femtograms(row.targetGrams), massUnit(row.weightUnit)) : undefined,
  }));
}

type Row = {
  id: string;
  lotId: string;
  lot: { code: string; productId: string };
  instrumentId: string | null;
  judged: Prisma.JsonValue;
  flags: string[];
  amendsId: string | null;
  reason: string;
  recordedBy: string;
  recordedAt: Date;
  takenAt: Date;
  station: string;
};

const commonOf = (row: Row, names: PersonNames) => ({
  id: row.id,
  lotId: row.lotId,
  lotCode: row.lot.code,
  productId: row.lot.productId,
  instrumentId: row.instrumentId ?? undefined,
  judged: row.judged as unknown as Judged[],
  flags: knownFlags(row.flags),
  made: madeBy(row, names),
  amends: row.amendsId ?? undefined,
  reason: row.reason,
});
