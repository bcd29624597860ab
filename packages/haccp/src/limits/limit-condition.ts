import type { WaterPhase } from '../formula/brine';

/**
 * Before a figure may be used: the formula answers it, or adopting the plan affirms it. In thousandths of a ppm or of a
 * percent.
 */
export type LimitCondition =
  /** Ingoing. `batch`, the stricter, where the source leaves it open. */
  | { kind: 'nitrite'; least: number; per: 'meat block' | 'batch' }
  /** Ingoing erythorbate or ascorbate, whatever its source. */
  | { kind: 'accelerator'; least: number; per: 'meat block' | 'batch' }
  | { kind: 'salt in water phase'; least: number; formula: WaterPhase }
  | { kind: 'statement'; says: string }
  /** A gap of the guideline that replaced it, or support of one's own. */
  | { kind: 'support'; says: string };

export type FormulationCondition = Exclude<LimitCondition, { kind: 'statement' | 'support' }>;

export const isOfFormulation = (condition: LimitCondition): condition is FormulationCondition =>
  condition.kind !== 'statement' && condition.kind !== 'support';

export const dependsOnFormulation = ({ conditions }: { conditions?: LimitCondition[] }): boolean =>
  (conditions ?? []).some(isOfFormulation);
