import type { CannotWork, Working } from '@larderbook/haccp';
import { Problem } from '../platform/problem';

/** A calculation that cannot be done is a problem that says why. */
export function worked(outcome: Working | CannotWork): Working {
  if ('cannot' in outcome) throw new Problem('cannot-be-worked-out', { detail: outcome.cannot });
  return outcome;
}
