import { catalogue, limitSetById } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import type { OwnOffered } from './own-limits-on-offer';

/** Published limits come first. */
export const publishedLimits = (own: readonly OwnOffered[], { sayLimit, sayName }: LimitTeller) => ({
  limits: [
    ...catalogue.map(({ key, title, limit }) => ({ key, title: titleOf(key, title, sayName), said: sayLimit(limit), limit })),
    ...own,
  ],
});

/** A row from abroad is called by its set as well. */
export function titleOf(key: string, title: string, sayName: LimitTeller['sayName']): string {
  const [setId = '', rowId] = key.split('/');
  const set = limitSetById(setId);
  const row = set?.rows.find(({ id }) => id === rowId);
  return set && row ? `${sayName(set.title)}: ${sayName(row.title)}` : sayName(title);
}
