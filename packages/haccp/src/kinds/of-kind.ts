import type { CriticalLimit } from '../limits/limit';
import type { LimitKind, LimitOf } from './kind';

/** For code about this kind alone; what differs by kind is asked of its registry. */
export const isOfKind = <K extends LimitKind>(limit: CriticalLimit | undefined, kind: K): limit is LimitOf<K> => limit?.kind === kind;

export const limitsOfKind = <K extends LimitKind>(limits: readonly CriticalLimit[], kind: K): LimitOf<K>[] =>
  limits.filter((limit) => isOfKind(limit, kind));
