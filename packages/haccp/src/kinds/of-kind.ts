import type { CriticalLimit } from '../limits/limit';
import type { LimitKind, LimitOf } from './kind';

/** Is it a limit of this kind? For what is only about that kind; what differs by kind is asked of its registry. */
export const isOfKind = <K extends LimitKind>(limit: CriticalLimit | undefined, kind: K): limit is LimitOf<K> => limit?.kind === kind;

/** The limits of one kind among others. */
export const limitsOfKind = <K extends LimitKind>(limits: readonly CriticalLimit[], kind: K): LimitOf<K>[] =>
  limits.filter((limit) => isOfKind(limit, kind));
