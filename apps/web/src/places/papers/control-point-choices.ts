import type { listControlPoints, ReplyOf } from '@larderbook/contracts';

type Listed = ReplyOf<typeof listControlPoints>['controlPoints'];

/** Control points to choose from; those that would read alike also name their plan. */
export function controlPointChoices(listed: Listed): { value: string; name: string }[] {
  const named = listed.map(({ controlPointId, productName, name, planTitle }) => ({
    value: controlPointId,
    name: `${productName}: ${name}`,
    planTitle,
  }));
  return named.map(({ value, name, planTitle }) => ({
    value,
    name: named.filter((other) => other.name === name).length > 1 ? `${name} (${planTitle})` : name,
  }));
}
