import { z } from 'zod';
import { gap, log10 } from '../limit-fields';
import { source } from '../source';

export const growth = z.object({
  kind: z.literal('growth'),
  species: z.enum(['beef', 'chicken', 'pork', 'mixed or unknown']),
  log10,
  longestGapSeconds: gap,
  source,
});
