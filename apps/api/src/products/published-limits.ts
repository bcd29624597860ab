import { catalogue, type CatalogueEntry } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import type { OwnOffered } from './own-limits-on-offer';

/** Published limits come first. */
export const publishedLimits = (own: readonly OwnOffered[], { sayLimit, sayName }: LimitTeller) => ({
  limits: [
    ...catalogue.map((entry) => ({ key: entry.key, title: titleOf(entry, sayName), said: sayLimit(entry.limit), limit: entry.limit })),
    ...own,
  ],
});

/** A row from abroad is called by its set as well. */
export const titleOf = ({ set, title }: CatalogueEntry, sayName: LimitTeller['sayName']): string =>
  set === undefined ? sayName(title) : `${sayName(set)}: ${sayName(title)}`;
