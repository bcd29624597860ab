import type { ControlPoint, Judged } from '@larderbook/contracts';
import { isSameMiss, type Verdict } from '@larderbook/haccp';
import { openDeviation } from '../deviations/open-deviation';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { isOfMiss } from './is-settled';
import { readLots } from './lot-rows';

export type JudgedAt = { point: ControlPoint; judged: readonly Judged[] };
export type JudgedEntry = { lotId: string; subjectId: string; takenAt: Date };
/** The same miss has the same key, so that it opens one deviation. */
type DedupeKeyOf = (point: ControlPoint, limitId: string) => string;

/**
 * Returns the first deviation. Curves and weighed substances are judged with every entry, so lot and limit share one
 * key.
 */
export async function openForMisses(
  tx: Tx,
  entry: JudgedEntry,
  judgedAt: readonly JudgedAt[],
  by: Person,
  at: Date,
  dedupeKeyOf: DedupeKeyOf = (point, limitId) => `${entry.lotId}:${point.controlPointId}:${limitId}`,
): Promise<string | undefined> {
  let first: string | undefined;
  for (const { point, judged } of judgedAt) {
    for (const { limitId, limit, verdict } of judged) {
      if (verdict.kind !== 'missed') continue;
      const where = { lotId: entry.lotId, point };
      const dedupeKey = await dedupeKeyNow(tx, dedupeKeyOf(point, limitId), verdict, where);
      const about = { controlPointId: point.controlPointId, limitId, limit, verdict };
      const deviationId = await openDeviation(tx, { dedupeKey, ...entry, ...about }, by, at);
      first ??= deviationId;
    }
  }
  return first;
}

/**
 * An open deviation, or one closed over this very miss, keeps its key; a changed miss gets a new one.
 * @param where the control point, where the miss can have grown since
 */
export async function dedupeKeyNow(
  tx: Tx,
  base: string,
  verdict: Verdict,
  where?: { lotId: string; point: ControlPoint },
): Promise<string> {
  const known = await tx.deviation.findMany({
    where: { OR: [{ dedupeKey: base }, { dedupeKey: { startsWith: `${base}:` } }] },
    select: { id: true, dedupeKey: true, verdict: true, closings: { select: { id: true }, where: { takenBack: null } } },
    orderBy: { number: 'desc' },
  });
  const [latest] = known;
  if (!latest) return base;
  if (latest.closings.length === 0) return latest.dedupeKey;
  if (where?.point.takenAs !== 'curve' && isSameMiss(latest.verdict as Verdict | null, verdict)) return latest.dedupeKey;
  const isDecided = where !== undefined && (await wasDecided(tx, latest.id, verdict, where));
  return isDecided ? latest.dedupeKey : `${base}:${known.length + 1}`;
}

async function wasDecided(
  tx: Tx,
  id: string,
  verdict: Verdict,
  { lotId, point }: { lotId: string; point: ControlPoint },
): Promise<boolean> {
  const [rows] = await readLots(tx, [lotId]);
  const deviation = rows?.deviations.find(({ deviationId }) => deviationId === id);
  return rows !== undefined && deviation !== undefined && isOfMiss(deviation, point, verdict, rows);
}
