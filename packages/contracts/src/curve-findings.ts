import { z } from 'zod';
import { coded } from './verdicts';

const at = z.number();

/** Something found in the readings of a curve: what, where, how the judges treat it and what to do. Instants are epoch ms. */
export const curveFinding = z.object({
  kind: z.string(),
  found: coded,
  probe: z.string().optional(),
  from: at.optional(),
  to: at.optional(),
  readings: z.number().int(),
  treatment: z.enum(['left out', 'nothing is met with it', 'counts only against the lot', 'used as it is']),
  whatToDo: coded,
  /** The readings concerned, of which a person can say what they were. */
  readingIds: z.array(z.string()).optional(),
});
export type CurveFinding = z.output<typeof curveFinding>;
