import type { LimitSet } from './limit-set';

/** What a plan was built on: the set, and the day (ISO 8601) on which it is asked. */
export type BuiltOn = { setId: string; today: string };

/**
 * The newest set that takes the place of the one a plan was built on and counts by that day; undefined when it is still
 * the latest. It is a reason to reassess the plan and never changes it: old lots are judged by what was in force.
 */
export function newerEditionOf(sets: readonly LimitSet[], { setId, today }: BuiltOn): LimitSet | undefined {
  const seen = new Set([setId]);
  let newest: LimitSet | undefined;
  for (let next = following(sets, setId, today); next && !seen.has(next.id); next = following(sets, next.id, today)) {
    seen.add(next.id);
    newest = next;
  }
  return newest;
}

const following = (sets: readonly LimitSet[], id: string, today: string): LimitSet | undefined =>
  sets.find((set) => set.replaces === id && set.validFrom <= today);
