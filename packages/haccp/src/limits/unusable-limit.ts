import type { LimitFault } from './limit-fault-code';
import type { Found, Verdict } from './verdict';

/** Nothing is ever met against a limit that contradicts itself. */
export const unusableLimit = (fault: LimitFault): Pick<Verdict, 'kind'> & Found => ({
  kind: 'undetermined',
  finding: 'limit-unusable',
  figures: { fault },
});
