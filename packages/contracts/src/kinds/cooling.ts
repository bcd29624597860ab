import { z } from 'zod';
import { gap, printed, seconds } from '../limit-fields';
import { source } from '../source';

const stage = z.discriminatedUnion('counted', [
  z.object({ from: printed, to: printed, withinSeconds: seconds, counted: z.enum(['stage', 'start']) }),
  z.object({ to: printed, withinSeconds: seconds, counted: z.literal('end of cooking') }),
]);

export const cooling = z.object({
  kind: z.literal('cooling'),
  stages: z.array(stage).min(1).max(6),
  startWithinSeconds: seconds.optional(),
  longestGapSeconds: gap,
  source,
});
