import type { LimitThatApplies } from '@larderbook/contracts';
import type { Purpose } from '@larderbook/haccp';

export function byPurpose(limits: readonly LimitThatApplies[]): [purpose: Purpose, limits: LimitThatApplies[]][] {
  const groups = new Map<Purpose, LimitThatApplies[]>();
  for (const limit of limits) groups.set(limit.purpose, [...(groups.get(limit.purpose) ?? []), limit]);
  return [...groups];
}
