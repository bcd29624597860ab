import type { CannotWork, Working } from '@larderbook/haccp';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/** A calculation that cannot be done is a problem that says why. */
export function worked(outcome: Working | CannotWork): Working {
  if ('cannot' in outcome) throw new Problem('cannot-be-worked-out', told('as-worded', { said: outcome.cannot }));
  return outcome;
}
