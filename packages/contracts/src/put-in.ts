import { z } from 'zod';
import { amendment } from './corrections';
import { fault } from './fault';
import { flagList, id, instant, mass } from './fields';
import { floor, route } from './route';

export const putIn = route({
  method: 'PUT',
  path: '/inputs/:inputId',
  summary: 'Put meat, or rework of an earlier lot, into a lot',
  roles: floor,
  body: z
    .object({
      lotId: id,
      receiptId: id.optional(),
      sourceLotId: id.optional(),
      weight: mass,
      /** Weight after boning and trimming; without it, the weight taken. */
      trimmed: mass.optional(),
      /** The number fits another unit; the person is sure. */
      sure: z.boolean().optional(),
      takenAt: instant,
    })
    .extend(amendment)
    .refine((input) => (input.receiptId === undefined) !== (input.sourceLotId === undefined), {
      path: ['receiptId'],
      message: fault('delivery-or-earlier-lot'),
    }),
  returns: z.object({
    inputId: z.string(),
    meatBlockGrams: z.number(),
    flags: flagList,
    /** A smaller meat block may bring a substance over its limit. */
    deviationId: z.string().optional(),
  }),
  problems: [
    'not-found',
    'more-than-there-is',
    'receipt-refused',
    'wrong-item',
    'into-itself',
    'trimmed-exceeds-taken',
    'still-in-use',
    'implausible-value',
    'reason-missing',
    'already-amended',
    'sent-differently',
  ],
});
