import { z } from 'zod';

const at = z.number();

/** Something found in the readings of a curve: what, where, how the judges treat it and what to do. Instants are epoch ms. */
export const curveFinding = z.object({
  kind: z.string(),
  said: z.string(),
  probe: z.string().optional(),
  from: at.optional(),
  to: at.optional(),
  readings: z.number().int(),
  treatment: z.string(),
  whatToDo: z.string(),
  /** The readings concerned, of which a person can say what they were. */
  readingIds: z.array(z.string()).optional(),
});
export type CurveFinding = z.output<typeof curveFinding>;
