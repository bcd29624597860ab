import type { ControlPoint } from '@larderbook/contracts';
import { Prisma } from '../generated/prisma/client';
import type { PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { entriesById, type Logged } from './logged-rows.queries';

export type Stretch = { point: ControlPoint; from: Date; until: Date };
/** The last batch ended here. Entries are ordered by the moment they were taken. */
export type Cursor = { at: Date; id: string };
export type Wanted = Stretch & { after?: Cursor; most: number };

/**
 * Oldest first. Entries voided, or corrected to another time or control point, are struck through. An entry corrected
 * within this log is reached through its correction.
 */
export async function loggedEntries(tx: Tx, wanted: Wanted, names: PersonNames): Promise<Logged[]> {
  const { point } = wanted;
  const last = await entriesById(tx, point, await lastOfThisLog(tx, wanted), names);
  const voided = await entriesById(
    tx,
    point,
    last.flatMap(({ voided, amends }) => (voided && amends) || []),
    names,
  );
  const before = new Map(voided.map((entry) => [entry.id, entry]));
  const elsewhere = await entriesById(tx, point, await correctedElsewhere(tx, point, last), names);
  const after = new Map(elsewhere.map((entry) => [entry.amends, entry]));
  return last.map((entry) => {
    const shown = entry.voided ? before.get(entry.amends ?? '') : undefined;
    return shown ? { ...shown, struckBy: entry } : { ...entry, struckBy: after.get(entry.id) };
  });
}

const tableOf = ({ takenAs }: ControlPoint) => Prisma.raw(takenAs === 'weighings' ? 'weighing' : 'reading');

/** A row that voids has the time of what it voids. */
async function lastOfThisLog(tx: Tx, { point, from, until, after, most }: Wanted): Promise<string[]> {
  const table = tableOf(point);
  const here = (row: string) => Prisma.sql`${Prisma.raw(row)}.control_point_id = ${point.controlPointId}::uuid
    AND ${Prisma.raw(row)}.taken_at >= ${from} AND ${Prisma.raw(row)}.taken_at < ${until}`;
  const later = after ? Prisma.sql`AND (e.taken_at, e.id) > (${after.at}, ${after.id}::uuid)` : Prisma.empty;
  const found = await tx.$queryRaw<{ id: string }[]>`
    SELECT e.id FROM ${table} e WHERE ${here('e')} ${later}
      AND NOT EXISTS (SELECT FROM ${table} c WHERE c.amends_id = e.id AND c.establishment_id = e.establishment_id AND ${here('c')})
    ORDER BY e.taken_at, e.id LIMIT ${most}`;
  return found.map(({ id }) => id);
}

async function correctedElsewhere(tx: Tx, point: ControlPoint, entries: readonly Logged[]): Promise<string[]> {
  const found = await tx.$queryRaw<{ id: string }[]>`
    SELECT id FROM ${tableOf(point)} WHERE amends_id = ANY(${entries.map(({ id }) => id)}::uuid[])`;
  return found.map(({ id }) => id);
}

export async function earlierEntries(tx: Tx, point: ControlPoint, entries: readonly Logged[], names: PersonNames): Promise<Logged[]> {
  const amended = entries.flatMap(({ amends }) => amends ?? []);
  if (amended.length === 0) return [];
  const earlier = await entriesById(tx, point, amended, names);
  return [...(await earlierEntries(tx, point, earlier, names)), ...earlier];
}
