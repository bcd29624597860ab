import { z } from 'zod';
import { coded, verdict } from './verdicts';

/** What a verdict finds, or what is to be done: told of the control point that is named, or alone. */
const ofVerdict = z.object({
  verdict,
  tells: z.enum(['because', 'because and notes', 'because and next', 'next or because']),
  point: z.string().optional(),
});

/**
 * What the book says of a case in its own words, one sentence after the other: codes with their figures, and verdicts.
 * Whoever shows it puts it into the words of the reader.
 */
export const account = z.array(z.union([coded, ofVerdict]));
export type Account = z.output<typeof account>;
