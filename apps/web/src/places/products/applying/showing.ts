import type { LimitThatApplies } from '@larderbook/contracts';

export type Showing = 'all' | 'judged' | 'not judged' | 'confirmed';

export const showing: { value: Showing; name: string }[] = [
  { value: 'all', name: 'All' },
  { value: 'judged', name: 'Judged in the plan' },
  { value: 'not judged', name: 'Not judged' },
  { value: 'confirmed', name: 'Read in the source' },
];

/** Only the very figure counts as judged. */
export const shownWhen: Record<Showing, (limit: LimitThatApplies) => boolean> = {
  all: () => true,
  judged: ({ inPlan }) => inPlan.kind === 'this figure',
  'not judged': ({ inPlan }) => inPlan.kind !== 'this figure',
  confirmed: ({ source }) => source.confirmed,
};
