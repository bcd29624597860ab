import type { WaterPhase } from '../formula/brine';
import type { ProductClass } from './product-class';

/** Something that has to hold before a figure may be used. Amounts are whole thousandths of a ppm or of a percent. */
export type Condition =
  | { kind: 'product'; among: readonly ProductClass[] }
  /** Nations or provinces of the jurisdiction. */
  | { kind: 'place'; among: readonly string[] }
  /**
   * Ingoing sodium nitrite, on the meat block or, where the source leaves it open, on the whole batch: the stricter.
   */
  | { kind: 'nitrite'; least: number; per: 'meat block' | 'batch' }
  /** Ingoing erythorbate or ascorbate, whatever its source. */
  | { kind: 'accelerator'; least: number; per: 'meat block' | 'batch' }
  | { kind: 'salt in water phase'; least: number; formula: WaterPhase }
  /** To be answered and supported in the plan. */
  | { kind: 'statement'; says: string };

/** "at least 100 ppm ingoing sodium nitrite on the meat block" */
export function sayCondition(condition: Condition): string {
  switch (condition.kind) {
    case 'product':
      return `for ${condition.among.join('; ')}`;
    case 'place':
      return `in ${condition.among.join(', ')}`;
    case 'nitrite':
      return `at least ${condition.least / 1000} ppm ingoing sodium nitrite on the ${condition.per}`;
    case 'accelerator':
      return `at least ${condition.least / 1000} ppm ingoing erythorbate or ascorbate on the ${condition.per}`;
    case 'salt in water phase':
      return `at least ${condition.least / 1000} % salt in the water phase, ${condition.formula}`;
    case 'statement':
      return condition.says;
  }
}
