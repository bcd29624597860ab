import { catalogue } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import type { OwnOffered } from './own-limits-on-offer';

/** Published limits come first. */
export const publishedLimits = (own: readonly OwnOffered[], { sayLimit }: LimitTeller) => ({
  limits: [...catalogue.map(({ key, title, limit }) => ({ key, title, said: sayLimit(limit), limit })), ...own],
});
