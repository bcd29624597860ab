import type { LimitSet } from './limit-set';

/** `today` is ISO 8601. */
export type BuiltOn = { setId: string; today: string };

/**
 * A reason to reassess the plan that never changes it: old lots are judged by what was in force. Undefined when the
 * plan's set is the latest.
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
