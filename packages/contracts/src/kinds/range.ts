import { z } from 'zod';
import { printed, strict } from '../limit-fields';
import { source } from '../source';

export const range = z.object({
  kind: z.literal('range'),
  measured: z.enum(['temperature', 'pH', 'aw', 'percent']),
  min: z.union([printed, z.number()]).optional(),
  max: z.union([printed, z.number()]).optional(),
  /** Where the source says "above" or "less than", the figure itself is outside. */
  signs: strict.optional(),
  source,
});
