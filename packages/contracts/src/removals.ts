import { z } from 'zod';
import { amendment } from './corrections';
import { fault } from './fault';
import { id, instant, mass, words } from './fields';
import { floor, route } from './route';

export const removalKinds = [
  'loss in cooking',
  'loss in chilling',
  'loss in drying',
  'sample',
  'waste',
  'returned to supplier',
  'counted difference',
] as const;
export const recordRemoval = route({
  method: 'PUT',
  path: '/removals/:removalId',
  summary: 'Record weight that left without being packed',
  roles: floor,
  body: z
    .object({
      lotId: id.optional(),
      receiptId: id.optional(),
      kind: z.enum(removalKinds),
      weight: mass,
      note: words(400),
      takenAt: instant,
      ...amendment,
    })
    .refine((removal) => (removal.lotId === undefined) !== (removal.receiptId === undefined), {
      path: ['lotId'],
      message: fault('lot-or-delivery'),
    }),
  returns: z.object({ removalId: z.string() }),
  problems: ['not-found', 'more-than-there-is', 'reason-missing', 'already-amended', 'in-the-future', 'sent-differently'],
});
