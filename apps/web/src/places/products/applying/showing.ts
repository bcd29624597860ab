import type { LimitThatApplies } from '@larderbook/contracts';

export const showing = ['all', 'judged', 'not judged', 'confirmed'] as const;
export type Showing = (typeof showing)[number];

/** Only the very figure counts as judged. */
export const shownWhen: Record<Showing, (limit: LimitThatApplies) => boolean> = {
  all: () => true,
  judged: ({ inPlan }) => inPlan.kind === 'this figure',
  'not judged': ({ inPlan }) => inPlan.kind !== 'this figure',
  confirmed: ({ source }) => source.confirmed,
};
