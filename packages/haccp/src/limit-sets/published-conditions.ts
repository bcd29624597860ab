import type { FigureLimit } from '../kinds/figure/figure-limit';
import { canonicalJson } from '../ledger/canonical-json';
import type { Conditioned, CriticalLimit } from '../limits/limit';
import { isOfFormulation, type FormulationCondition } from '../limits/limit-condition';
import { goesWithTheLimit } from './condition';
import type { LimitRow } from './limit-set';
import { limitSets } from './sets';

/**
 * Its figures, citation and edition. The longest gap and the support belong to the plan; how the figure is known may
 * change.
 */
export function figureOf(limit: CriticalLimit | FigureLimit): string {
  const { citation, edition } = limit.source;
  return canonicalJson({ ...limit, source: { citation, edition }, conditions: undefined, longestGapSeconds: undefined });
}

export function limitOfRow({ limit, conditions }: Pick<LimitRow, 'limit' | 'conditions'>): CriticalLimit {
  const own = conditions.filter(goesWithTheLimit);
  return own.length === 0 ? limit : { ...limit, conditions: own };
}

const conditionsByFigure = new Map(
  limitSets.flatMap(({ rows }) => rows.map((row) => [figureOf(row.limit), limitOfRow(row).conditions] as const)),
);

/** As the limit goes into a plan; a figure that no set prints has no conditions. */
export function withPublishedConditions<Limit extends CriticalLimit>(limit: Limit): Limit & Conditioned {
  const conditions = conditionsByFigure.get(figureOf(limit));
  return conditions ? { ...limit, conditions } : limit;
}

/** Conditions of the source that the limit lacks, as in plans from before limits carried them. */
export function conditionsLeftOut(limit: CriticalLimit): readonly FormulationCondition[] {
  const asked = new Set((limit.conditions ?? []).map(canonicalJson));
  const published = withPublishedConditions(limit).conditions ?? [];
  return published.filter(isOfFormulation).filter((condition) => !asked.has(canonicalJson(condition)));
}
