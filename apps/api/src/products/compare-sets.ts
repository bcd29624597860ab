import type { compareLimitSets, InputOf, ReplyOf } from '@larderbook/contracts';
import { differencesBetween, type LimitSet } from '@larderbook/haccp';
import { headOf, knownSet } from './show-limit-set';

/** What two sets print differently, matched by what their rows are about. Throws `no-such-set`. */
export function compareSets(
  { here: hereId, there: thereId }: InputOf<typeof compareLimitSets>,
  own: readonly LimitSet[],
): ReplyOf<typeof compareLimitSets> {
  const [here, there] = [knownSet(hereId, own), knownSet(thereId, own)];
  const { onlyHere, onlyThere, notRead, differing } = differencesBetween(here, there);
  return {
    here: headOf(here),
    there: headOf(there),
    onlyHere: onlyHere.map(({ title }) => title),
    onlyThere: onlyThere.map(({ title }) => title),
    notRead: notRead.map(({ title }) => title),
    differing: differing.map(({ here: row, differences }) => ({ rowId: row.id, title: row.title, differences })),
  };
}
