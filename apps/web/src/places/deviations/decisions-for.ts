import type { Decision, ProductConcerned } from '@larderbook/contracts';

export function decisionsFor({ lotId, left, here }: ProductConcerned): Decision[] {
  const isHere: Decision[] = lotId ? ['rework', 'condemn'] : ['condemn', 'return'];
  return ['release', ...(here.grams > 0 ? isHere : []), ...(left.grams > 0 ? ['recall' as const] : [])];
}
