import { z } from 'zod';
import { coded } from './verdicts';

const at = z.number();

/** Instants are epoch ms. `treatment` is how the judges treat the finding. */
export const curveFinding = z.object({
  kind: z.string(),
  found: coded,
  probe: z.string().optional(),
  from: at.optional(),
  to: at.optional(),
  readings: z.number().int(),
  treatment: z.enum(['left out', 'nothing is met with it', 'counts only against the lot', 'used as it is']),
  whatToDo: coded,
  /** A person can say what these readings were. */
  readingIds: z.array(z.string()).optional(),
});
export type CurveFinding = z.output<typeof curveFinding>;
