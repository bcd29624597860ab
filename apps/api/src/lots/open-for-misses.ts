import type { Judged } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { openDeviation } from '../deviations/open-deviation';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { isSameMiss } from './is-settled';

/** What was judged: at which control point of which lot, by which row. */
export type JudgedRow = {
  lotId: string;
  point: { controlPointId: string; name: string };
  judged: readonly Judged[];
  /** The same for the same miss, so that it opens one deviation: `reading:<id>:<limit>`, `<lot>:<control point>:<limit>`. */
  causeOf: (limitId: string) => string;
  subjectId: string;
  takenAt: Date;
};

/** Opens a deviation for every limit that was missed, in the transaction that judged it; the id of the first. */
export async function openForMisses(tx: Tx, row: JudgedRow, by: Person, at: Date): Promise<string | undefined> {
  const { lotId, point, subjectId, takenAt } = row;
  let first: string | undefined;
  for (const { limitId, limit, verdict } of row.judged) {
    if (verdict.kind !== 'missed') continue;
    const cause = await causeNow(tx, row.causeOf(limitId), verdict);
    const description = `${point.name}: ${verdict.because}`;
    const about = { lotId, controlPointId: point.controlPointId, limitId, subjectId, description, limit, verdict, takenAt };
    const deviationId = await openDeviation(tx, { cause, ...about }, by, at);
    first ??= deviationId;
  }
  return first;
}

/** A curve and a weighed substance are judged again with every entry: the cause is one for the lot and the limit. */
export const causeOnLot = (lotId: string, controlPointId: string) => (limitId: string) => `${lotId}:${controlPointId}:${limitId}`;

/** While a deviation is open, or closed over this very miss, it is the one. A miss that has changed since it was closed is another. */
async function causeNow(tx: Tx, base: string, verdict: Verdict): Promise<string> {
  const known = await tx.deviation.findMany({
    where: { OR: [{ cause: base }, { cause: { startsWith: `${base}:` } }] },
    select: { cause: true, verdict: true, closings: { select: { id: true } } },
    orderBy: { number: 'desc' },
  });
  const [latest] = known;
  if (!latest) return base;
  const isCovered = latest.closings.length === 0 || isSameMiss(latest.verdict as Verdict | null, verdict);
  return isCovered ? latest.cause : `${base}:${known.length + 1}`;
}
