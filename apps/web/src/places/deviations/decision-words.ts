import type { Decision, ProductConcerned, releaseBases } from '@larderbook/contracts';

type DecisionWords = { title: string; detail: string; saved: string };

/** Each decision, and what it means for the product. */
export const decisionWords: Record<Decision, DecisionWords> = {
  release: { title: 'Release', detail: 'It may go, and the basis shows why.', saved: 'released' },
  rework: { title: 'Rework', detail: 'It goes into a later lot, never out as it is.', saved: 'to be reworked' },
  condemn: { title: 'Condemn', detail: 'It leaves the food chain and is destroyed.', saved: 'condemned' },
  return: { title: 'Send back', detail: 'It goes back to its supplier.', saved: 'sent back to the supplier' },
  recall: { title: 'Call back', detail: 'It has left: customers send it back or destroy it.', saved: 'called back' },
};

/** What can become of this product: of a delivery, of a lot, of what has left. */
export function decisionsFor({ lotId, left, here }: ProductConcerned): Decision[] {
  const isHere: Decision[] = lotId ? ['rework', 'condemn'] : ['condemn', 'return'];
  return ['release', ...(here.grams > 0 ? isHere : []), ...(left.grams > 0 ? ['recall' as const] : [])];
}

export const basisWords: Record<(typeof releaseBases)[number], { title: string; detail: string }> = {
  'process authority': { title: 'Process authority', detail: 'Somebody competent said so, in writing.' },
  'test result': { title: 'Test result', detail: 'A laboratory or a test here shows it.' },
  'worked on and measured again': {
    title: 'Worked on and measured again',
    detail: 'Cooked, cooled or mixed on, and the readings show it.',
  },
  'document on file': { title: 'Document on file', detail: 'A published limit or study that covers this case.' },
};
