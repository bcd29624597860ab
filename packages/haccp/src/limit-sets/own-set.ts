import { faultsOfSet, type SetFault } from './faults-of-set';
import type { LimitRow, LimitSet } from './limit-set';

export type OwnSet = {
  id: string;
  title: string;
  edition: string;
  validFrom: string;
  replaces?: string;
  rows: readonly LimitRow[];
};

/** What is asked of the edition that a new one takes the place of. */
export type EditionBefore = Pick<LimitSet, 'edition' | 'validFrom'>;

/**
 * A set of one's own, with its own support on file: the same checks as a published one. `before` is the edition it
 * takes the place of. Its faults come back instead of it, so a set that contradicts itself is never used.
 */
export function ownSet(given: OwnSet, before?: EditionBefore): { set: LimitSet } | { faults: SetFault[] } {
  const set: LimitSet = { ...given, jurisdiction: 'own' };
  const faults = [
    ...(given.rows.length > 0 ? faultsOfSet(set) : [{ set: given.id, because: 'The set has no rows.' }]),
    ...(before ? faultsOfEdition(set, before) : []),
  ];
  return faults.length > 0 ? { faults } : { set };
}

/** An edition may count from the day of the one it replaces, so that a slip can be put right at once; never earlier. */
function faultsOfEdition({ id, edition, validFrom }: LimitSet, before: EditionBefore): SetFault[] {
  const because = [
    ...(edition === before.edition ? [`The edition it replaces is called ${before.edition} too.`] : []),
    ...(validFrom < before.validFrom ? [`It counts from ${validFrom}, before the edition it replaces (${before.validFrom}).`] : []),
  ];
  return because.map((sentence) => ({ set: id, because: sentence }));
}
