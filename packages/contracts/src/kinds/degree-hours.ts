import { z } from 'zod';
import { fault } from '../fault';
import { degree, gap } from '../limit-fields';
import { source } from '../source';

export const degreeHours = z.object({
  kind: z.literal('degreeHours'),
  base: degree,
  pH: z.object({ thousandths: z.number(fault('give-a-number')).int().min(1).max(14_000) }),
  classes: z
    .array(
      z.object({
        top: degree.optional(),
        isTopIncluded: z.boolean(),
        most: z.number(fault('whole-degree-hours')).int().min(1, fault('whole-degree-hours')).max(100_000),
      }),
    )
    .min(1)
    .max(8),
  longestGapSeconds: gap,
  source,
});
