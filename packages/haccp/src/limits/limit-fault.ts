import { kindOf } from '../kinds/registry';
import type { CriticalLimit } from './limit';
import type { LimitFault } from './limit-fault-code';

/** Undefined when the limit is sound. */
export const limitFault = (limit: CriticalLimit): LimitFault | undefined => kindOf(limit).fault(limit);
