import type { WaterPhase } from '../formula/brine';

/**
 * What a figure asks for besides itself before it may be used: of the formula, judged from what went into the lot, or a
 * statement that adopting the plan affirms. Amounts are whole thousandths of a ppm or of a percent.
 */
export type LimitCondition =
  /**
   * Ingoing sodium nitrite, on the meat block or, where the source leaves it open, on the whole batch: the stricter.
   */
  | { kind: 'nitrite'; least: number; per: 'meat block' | 'batch' }
  /** Ingoing erythorbate or ascorbate, whatever its source. */
  | { kind: 'accelerator'; least: number; per: 'meat block' | 'batch' }
  | { kind: 'salt in water phase'; least: number; formula: WaterPhase }
  | { kind: 'statement'; says: string }
  /** The plan has to say what supports it: a gap of the guideline that took its place, or support of one’s own. */
  | { kind: 'support'; says: string };

/** A condition that what went into a lot answers. */
export type FormulationCondition = Exclude<LimitCondition, { kind: 'statement' | 'support' }>;

export const isOfFormulation = (condition: LimitCondition): condition is FormulationCondition =>
  condition.kind !== 'statement' && condition.kind !== 'support';

/** Does what goes into the lot decide whether this limit may be used? */
export const dependsOnFormulation = ({ conditions }: { conditions?: LimitCondition[] }): boolean =>
  (conditions ?? []).some(isOfFormulation);
