import { z } from 'zod';
import { source } from '../source';

export const attestation = z.object({
  kind: z.literal('attestation'),
  statement: z.string().min(3),
  asks: z.enum(['moment', 'humidity']).optional(),
  source,
});
