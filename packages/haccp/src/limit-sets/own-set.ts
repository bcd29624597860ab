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

export type EditionBefore = Pick<LimitSet, 'edition' | 'validFrom'>;

/** Checked as a published set is. With faults there is no set: one that contradicts itself is never used. */
export function ownSet(given: OwnSet, before?: EditionBefore): { set: LimitSet } | { faults: SetFault[] } {
  const set: LimitSet = { ...given, jurisdiction: 'own' };
  const faults = [
    ...(given.rows.length > 0 ? faultsOfSet(set) : [{ set: given.id, because: { code: 'rows-missing' } } as const]),
    ...(before ? faultsOfEdition(set, before) : []),
  ];
  return faults.length > 0 ? { faults } : { set };
}

/** From the same day a slip can be corrected at once; never earlier. */
function faultsOfEdition({ id, edition, validFrom }: LimitSet, before: EditionBefore): SetFault[] {
  const faults: CodedAs<WholeSetFaultCode>[] = [
    ...(edition === before.edition ? [{ code: 'edition-called-alike', figures: { edition } } as const] : []),
    ...(validFrom < before.validFrom
      ? [{ code: 'edition-counts-earlier', figures: { from: validFrom, before: before.validFrom } } as const]
      : []),
  ];
  return faults.map((because) => ({ set: id, because }));
}
