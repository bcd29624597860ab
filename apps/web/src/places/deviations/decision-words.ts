import type { decisions } from '@larderbook/contracts';

/** Each decision, and what it means for the product. */
export const decisionWords: Record<(typeof decisions)[number], { title: string; detail: string }> = {
  release: { title: 'Release', detail: 'It is safe as it is, and the basis shows why.' },
  rework: { title: 'Rework', detail: 'It goes into a later lot.' },
  reprocess: { title: 'Reprocess', detail: 'It goes through the step again.' },
  condemn: { title: 'Condemn', detail: 'It leaves the food chain.' },
};
