import type { FigureLimit } from '../kinds/figure/figure-limit';
import { canonicalJson } from '../ledger/canonical-json';
import type { Conditioned, CriticalLimit } from '../limits/limit';
import { isOfFormulation, type FormulationCondition } from '../limits/limit-condition';
import { goesWithTheLimit } from './condition';
import type { LimitRow } from './limit-set';
import { limitSets } from './sets';

/**
 * A published figure, to be recognized wherever it stands by its figures, citation and edition. How long a gap between
 * readings is tolerated and what supports it is the plan's own to say; how it is known may have changed since.
 */
export function figureOf(limit: CriticalLimit | FigureLimit): string {
  const { citation, edition } = limit.source;
  return canonicalJson({ ...limit, source: { citation, edition }, conditions: undefined, longestGapSeconds: undefined });
}

/** The limit of a row with what has to hold before it may be used, as it goes into a plan. */
export function limitOfRow({ limit, conditions }: Pick<LimitRow, 'limit' | 'conditions'>): CriticalLimit {
  const own = conditions.filter(goesWithTheLimit);
  return own.length === 0 ? limit : { ...limit, conditions: own };
}

const conditionsByFigure = new Map(
  limitSets.flatMap(({ rows }) => rows.map((row) => [figureOf(row.limit), limitOfRow(row).conditions] as const)),
);

/**
 * A limit with what its source asks for before it may be used, as it goes into a plan. A figure that no set prints has
 * none.
 */
export function withPublishedConditions<Limit extends CriticalLimit>(limit: Limit): Limit & Conditioned {
  const conditions = conditionsByFigure.get(figureOf(limit));
  return conditions ? { ...limit, conditions } : limit;
}

/**
 * What the source of a figure asks of the formula before it may be used and the limit does not, as in a plan from
 * before limits carried it.
 */
export function conditionsLeftOut(limit: CriticalLimit): readonly FormulationCondition[] {
  const asked = new Set((limit.conditions ?? []).map(canonicalJson));
  const published = withPublishedConditions(limit).conditions ?? [];
  return published.filter(isOfFormulation).filter((condition) => !asked.has(canonicalJson(condition)));
}
