import { faultsOfWhere, type WhereItWorks } from '@larderbook/haccp';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/** Throws `invalid-input` when the place or edition is not of its jurisdiction. */
export function checkWhereItWorks(where: WhereItWorks, at = '#'): void {
  const faults = faultsOfWhere(where);
  if (faults.length === 0) return;
  const details = faults.map(({ because }) => told('as-worded', { said: because }));
  const errors = faults.map(({ field, because }) => ({ pointer: `${at}/${field}`, ...told('as-worded', { said: because }) }));
  throw new Problem('invalid-input', details, errors);
}
