import { z } from 'zod';
import { gap, printed, seconds } from '../limit-fields';
import { source } from '../source';

export const bandTime = z.object({
  kind: z.literal('bandTime'),
  from: printed,
  to: printed,
  maxSeconds: seconds,
  longestGapSeconds: gap,
  source,
});
