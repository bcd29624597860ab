import type { listLimitSets, ReplyOf } from '@larderbook/contracts';
import type { Where } from './where-fields';

export type PublishedSet = Pick<
  ReplyOf<typeof listLimitSets>['sets'][number],
  'setId' | 'jurisdiction' | 'title' | 'edition' | 'validFrom' | 'usual'
>;

export const editionsOf = <T extends PublishedSet>(sets: readonly T[], jurisdiction: string): T[] =>
  sets.filter((set) => set.jurisdiction === jurisdiction).toSorted((a, b) => b.validFrom.localeCompare(a.validFrom));

export const titleOf = ({ title, edition }: Pick<PublishedSet, 'title' | 'edition'>): string =>
  title.includes(edition) ? title : `${title}, ${edition}`;

/** Undefined while the set is unknown. */
export function editionInUse(
  sets: readonly PublishedSet[],
  { jurisdiction, limitSet }: Where,
): { edition: string; isUsual: boolean } | undefined {
  const set = sets.find((one) => (limitSet ? one.setId === limitSet : one.usual && one.jurisdiction === jurisdiction));
  return set && { edition: titleOf(set), isUsual: limitSet === undefined };
}
