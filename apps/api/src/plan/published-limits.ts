import { catalogue, sayLimit } from '@larderbook/haccp';

/** Published limits to choose from when a plan is written, each with its own wording. */
export const publishedLimits = () => ({
  limits: catalogue.map(({ key, title, limit }) => ({ key, title, said: sayLimit(limit), limit })),
});
