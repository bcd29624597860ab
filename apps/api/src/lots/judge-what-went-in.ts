import type { ControlPoint } from '@larderbook/contracts';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { judgeDependents } from './judge-dependents';
import { judgeWeighings } from './judge-weighings';
import { openForMisses, type JudgedEntry } from './open-for-misses';
import { openForUnjudged } from './open-for-unjudged';
import { wentInto } from './what-went-in';

export async function judgeWhatWentIn(tx: Tx, entry: JudgedEntry, points: readonly ControlPoint[], by: Person, at: Date) {
  const wentIn = await wentInto(tx, entry.lotId);
  const judgedAt = points
    .filter(({ takenAs }) => takenAs === 'weighings')
    .map((point) => ({ point, judged: judgeWeighings(point, wentIn) }));
  const dependents = await judgeDependents(tx, entry.lotId, points);
  const missed = await openForMisses(tx, entry, [...judgedAt, ...dependents], by, at);
  const unjudged = await openForUnjudged(tx, entry, points, wentIn, by, at);
  return { wentIn, deviationId: missed ?? unjudged };
}
