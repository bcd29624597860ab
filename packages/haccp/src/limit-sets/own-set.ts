import type { CodedAs } from '../limits/coded';
import { faultsOfSet } from './faults-of-set';
import type { LimitRow, LimitSet } from './limit-set';
import type { SetFault, WholeSetFaultCode } from './set-fault';

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
    ...(given.rows.length > 0 ? faultsOfSet(set) : [{ set: given.id, because: { code: 'rows-missing' } } as const]),
    ...(before ? faultsOfEdition(set, before) : []),
  ];
  return faults.length > 0 ? { faults } : { set };
}

/** An edition may count from the day of the one it replaces, so that a slip can be put right at once; never earlier. */
function faultsOfEdition({ id, edition, validFrom }: LimitSet, before: EditionBefore): SetFault[] {
  const faults: CodedAs<WholeSetFaultCode>[] = [
    ...(edition === before.edition ? [{ code: 'edition-called-alike', figures: { edition } } as const] : []),
    ...(validFrom < before.validFrom
      ? [{ code: 'edition-counts-earlier', figures: { from: validFrom, before: before.validFrom } } as const]
      : []),
  ];
  return faults.map((because) => ({ set: id, because }));
}
