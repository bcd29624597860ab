import { faultsOfWhere, type FaultOfWhere, type WhereItWorks } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { Problem } from '../platform/problem';
import { told, type Told } from '../platform/told';

/** Throws `invalid-input` when the place or edition is not of its jurisdiction. */
export function checkWhereItWorks(where: WhereItWorks, at = '#'): void {
  const faults = faultsOfWhere(where);
  if (faults.length === 0) return;
  const errors = faults.map((fault) => ({ pointer: `${at}/${fault.field}`, ...toldOf(fault, where) }));
  throw new Problem('invalid-input', errors, errors);
}

function toldOf({ field, said }: FaultOfWhere, { jurisdiction }: WhereItWorks): Told {
  const of = jurisdiction && { jurisdiction: { code: codeOf('name', jurisdiction) } };
  if (field === 'place') return of ? told('place-of-another', { place: said, ...of }) : told('place-without-jurisdiction', { place: said });
  return of ? told('edition-of-another', { edition: said, ...of }) : told('edition-without-jurisdiction', { edition: said });
}
