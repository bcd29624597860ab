import { catalogue } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import type { OwnOffered } from './own-limits-on-offer';

/** Limits to choose from when a plan is written, each with its own wording: the published ones, then one's own. */
export const publishedLimits = (own: readonly OwnOffered[], { sayLimit }: LimitTeller) => ({
  limits: [...catalogue.map(({ key, title, limit }) => ({ key, title, said: sayLimit(limit), limit })), ...own],
});
