import type { listLimitSets, ReplyOf } from '@larderbook/contracts';
import type { Where } from './where-fields';

export type PublishedSet = Pick<
  ReplyOf<typeof listLimitSets>['sets'][number],
  'setId' | 'jurisdiction' | 'title' | 'edition' | 'validFrom' | 'usual'
>;

/** The editions of a jurisdiction, the newest first. */
export const editionsOf = <T extends PublishedSet>(sets: readonly T[], jurisdiction: string): T[] =>
  sets.filter((set) => set.jurisdiction === jurisdiction).toSorted((a, b) => b.validFrom.localeCompare(a.validFrom));

export const sayEdition = ({ title, edition }: Pick<PublishedSet, 'title' | 'edition'>): string =>
  title.includes(edition) ? title : `${title}, ${edition}`;

/** The edition a shop works by, and whether it chose it; nothing while neither is known. */
export function sayEditionInUse(sets: readonly PublishedSet[], { jurisdiction, limitSet }: Where): string | undefined {
  const set = sets.find((one) => (limitSet ? one.setId === limitSet : one.usual && one.jurisdiction === jurisdiction));
  return set && `${sayEdition(set)}${limitSet ? '' : ' (the usual one)'}`;
}
