import { z } from 'zod';
import { gap, printed, seconds } from '../limit-fields';
import { source } from '../source';

export const dwell = z.object({
  kind: z.literal('dwell'),
  rows: z
    .array(z.object({ at: printed, seconds }))
    .min(1)
    .max(60),
  longestGapSeconds: gap,
  source,
});
