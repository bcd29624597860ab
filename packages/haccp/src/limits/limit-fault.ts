import { kindOf } from '../kinds/registry';
import type { CriticalLimit } from './limit';

/** One sentence on why nothing could ever be judged against a limit; undefined when it is sound. */
export const limitFault = (limit: CriticalLimit): string | undefined => kindOf(limit).fault(limit);
