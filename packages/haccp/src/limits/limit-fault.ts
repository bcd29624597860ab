import { kindOf } from '../kinds/registry';
import type { CriticalLimit } from './limit';
import type { LimitFault } from './limit-fault-code';

export const limitFault = (limit: CriticalLimit): LimitFault | undefined => kindOf(limit).fault(limit);
