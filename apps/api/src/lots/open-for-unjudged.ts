import type { ControlPoint } from '@larderbook/contracts';
import { openDeviation } from '../deviations/open-deviation';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { dedupeKeyNow, type JudgedEntry } from './open-for-misses';
import { unjudgedSubstances } from './unjudged-substances';
import type { WentIn } from './what-went-in';

/** Somebody has to decide what no control point judges. Returns the first deviation. */
export async function openForUnjudged(
  tx: Tx,
  entry: JudgedEntry,
  points: readonly ControlPoint[],
  wentIn: WentIn,
  by: Person,
  at: Date,
): Promise<string | undefined> {
  let first: string | undefined;
  for (const { substance, judged } of unjudgedSubstances(points, wentIn)) {
    const { limit, verdict } = judged;
    const dedupeKey = await dedupeKeyNow(tx, `${entry.lotId}:unjudged:${substance}`, verdict);
    const opening = { dedupeKey, ...entry, substance, limit, verdict };
    const deviationId = await openDeviation(tx, opening, by, at);
    first ??= deviationId;
  }
  return first;
}
