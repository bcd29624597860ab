import type { LimitCondition } from '../limits/limit-condition';
import type { ProductClass } from './product-class';

/** Product and place choose the row; other conditions go with the limit into the plan. */
export type Condition =
  | { kind: 'product'; among: readonly ProductClass[] }
  /** Nations or provinces of the jurisdiction. */
  | { kind: 'place'; among: readonly string[] }
  | LimitCondition;

export const goesWithTheLimit = (condition: Condition): condition is LimitCondition =>
  condition.kind !== 'product' && condition.kind !== 'place';
