import type { listLimitSets, ReplyOf } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

export type SetHead = ReplyOf<typeof listLimitSets>['sets'][number];

/** "US retail, Food Code 2022", "Our smokehouse, 2026-1". */
export const nameOfSet = ({ title, edition }: Pick<SetHead, 'title' | 'edition'>, say: SayOf<'calculators'>): string =>
  title.includes(edition) ? title : say('set-of', { title, edition });
