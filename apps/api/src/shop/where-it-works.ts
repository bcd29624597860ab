import { faultsOfWhere, type WhereItWorks } from '@larderbook/haccp';
import { Problem } from '../platform/problem';

/** Throws `invalid-input` when a place or an edition is not of the jurisdiction it is named with. */
export function checkWhereItWorks(where: WhereItWorks, at = '#'): void {
  const faults = faultsOfWhere(where);
  if (faults.length === 0) return;
  const errors = faults.map(({ field, because }) => ({ pointer: `${at}/${field}`, detail: because }));
  throw new Problem('invalid-input', { detail: faults.map(({ because }) => because).join(' '), errors });
}
