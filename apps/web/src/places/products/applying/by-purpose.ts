import type { LimitThatApplies } from '@larderbook/contracts';

/** Limits under what they are about, in the order they come; headings begin with a capital. */
export function byPurpose(limits: readonly LimitThatApplies[]): [heading: string, limits: LimitThatApplies[]][] {
  const groups = new Map<string, LimitThatApplies[]>();
  for (const limit of limits) groups.set(limit.purpose, [...(groups.get(limit.purpose) ?? []), limit]);
  return [...groups].map(([purpose, own]) => [purpose.charAt(0).toUpperCase() + purpose.slice(1), own]);
}
