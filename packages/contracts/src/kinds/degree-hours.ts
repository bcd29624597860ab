import { z } from 'zod';
import { degree, gap } from '../limit-fields';
import { source } from '../source';

export const degreeHours = z.object({
  kind: z.literal('degreeHours'),
  base: degree,
  pH: z.object({ thousandths: z.number().int().min(1).max(14_000) }),
  classes: z
    .array(z.object({ top: degree.optional(), isTopIncluded: z.boolean(), most: z.number().int().min(1).max(100_000) }))
    .min(1)
    .max(8),
  longestGapSeconds: gap,
  source,
});
