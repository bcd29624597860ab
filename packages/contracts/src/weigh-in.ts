import { z } from 'zod';
import { amendment } from './corrections';
import { flagList, id, instant, mass } from './fields';
import { floor, route } from './route';
import { verdicts } from './verdicts';

export const weighIn = route({
  method: 'PUT',
  path: '/weighings/:weighingId',
  summary: 'Weigh an ingredient into a lot',
  roles: floor,
  body: z
    .object({
      lotId: id,
      itemId: id,
      receiptId: id.optional(),
      weight: mass,
      instrumentId: id.optional(),
      takenAt: instant,
      /** The number fits its target in another unit; the person is sure. */
      sure: z.boolean().optional(),
    })
    .extend(amendment),
  returns: z.object({
    weighingId: z.string(),
    controlPointId: z.string().optional(),
    verdicts,
    flags: flagList,
    deviationId: z.string().optional(),
  }),
  problems: [
    'not-found',
    'more-than-there-is',
    'receipt-refused',
    'wrong-item',
    'still-in-use',
    'implausible-value',
    'reason-missing',
    'already-amended',
    'sent-differently',
  ],
});
