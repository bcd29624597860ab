import { kindOf } from '../kinds/registry';
import type { CriticalLimit } from './limit';
import type { LimitFault } from './limit-fault-code';

/** Why nothing could ever be judged against a limit; undefined when it is sound. */
export const limitFault = (limit: CriticalLimit): LimitFault | undefined => kindOf(limit).fault(limit);
