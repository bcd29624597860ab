import { z } from 'zod';
import { figureUnits } from '../fields';
import { strict } from '../limit-fields';
import { source } from '../source';
import { fault } from '../fault';

const thousandths = z.number().int().min(0).max(1e9);

export const figure = z.object({
  kind: z.literal('figure'),
  of: z.string().trim().min(1, fault('what-is-compared')).max(120),
  unit: z.enum(figureUnits),
  min: thousandths.optional(),
  max: thousandths.optional(),
  signs: strict.optional(),
  /** The source advises the figure and does not ask for it: it fails nothing. */
  advises: z.literal(true).optional(),
  printed: z.string().optional(),
  source,
});
