import { z } from 'zod';
import { coded } from './verdicts';

export const reviewOnLot = z.object({
  reviewId: z.string(),
  personId: z.string(),
  by: z.string(),
  at: z.string(),
  statement: z.string(),
  soleWorker: z.boolean(),
  counts: z.boolean(),
  /** Packages still here that the review does not cover. */
  packedSince: z.number().int(),
  /** Control points met and settled, deviations closed. */
  covered: z.object({ met: z.number().int(), settled: z.number().int(), closed: z.number().int() }),
  /** Absent where a later review simply replaced it. */
  takenBack: z
    .object({ what: coded, by: z.string(), at: z.string(), /** Only when a person took it back. */ reason: z.string().optional() })
    .optional(),
});
