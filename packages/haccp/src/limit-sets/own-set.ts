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

/**
 * A set of one's own, with its own support on file: the same checks as a published one. Its faults come back instead of
 * it, so a set that contradicts itself is never used.
 */
export function ownSet(given: OwnSet): { set: LimitSet } | { faults: SetFault[] } {
  const set: LimitSet = { ...given, jurisdiction: 'own' };
  const faults = given.rows.length > 0 ? faultsOfSet(set) : [{ set: given.id, because: 'The set has no rows.' }];
  return faults.length > 0 ? { faults } : { set };
}
