import type { listLimitSets, ReplyOf } from '@larderbook/contracts';
import type { Where } from './where-fields';

export type PublishedSet = Pick<
  ReplyOf<typeof listLimitSets>['sets'][number],
  'setId' | 'jurisdiction' | 'title' | 'edition' | 'validFrom' | 'usual'
>;

/** The editions of a jurisdiction, the newest first. */
export const editionsOf = <T extends PublishedSet>(sets: readonly T[], jurisdiction: string): T[] =>
  sets.filter((set) => set.jurisdiction === jurisdiction).toSorted((a, b) => b.validFrom.localeCompare(a.validFrom));

export const titleOf = ({ title, edition }: Pick<PublishedSet, 'title' | 'edition'>): string =>
  title.includes(edition) ? title : `${title}, ${edition}`;

/** The edition a shop works by, and whether it is the usual one because none was chosen; nothing while neither is known. */
export function editionInUse(
  sets: readonly PublishedSet[],
  { jurisdiction, limitSet }: Where,
): { edition: string; isUsual: boolean } | undefined {
  const set = sets.find((one) => (limitSet ? one.setId === limitSet : one.usual && one.jurisdiction === jurisdiction));
  return set && { edition: titleOf(set), isUsual: limitSet === undefined };
}
