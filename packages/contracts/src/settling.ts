import { z } from 'zod';
import { amendment } from './corrections';
import { correctiveAction } from './corrective-actions';
import { deviation } from './deviations';
import { decisions, releaseBases } from './dispositions';
import { fault } from './fault';
import { id, instant, mass, sentence, words } from './fields';
import { floor, route } from './route';

export const recordCorrectiveAction = route({
  method: 'PUT',
  path: '/corrective-actions/:actionId',
  summary: 'The parts of 9 CFR 417.3(a) or (b), or of a prerequisite; corrects one that it names',
  roles: floor,
  body: z.object({ deviationId: id, action: correctiveAction, takenAt: instant, ...amendment }),
  returns: deviation,
  problems: [
    'not-found',
    'deviation-closed',
    'other-form',
    'say-what-will-differ',
    'reason-missing',
    'already-amended',
    'in-the-future',
    'sent-differently',
  ],
});
const dispositionFields = z
  .object({
    /** All must be open and concern the product. */
    deviationIds: z
      .array(id)
      .min(1, fault('one-deviation-at-least'))
      .max(50)
      .refine((ids) => new Set(ids).size === ids.length, fault('each-deviation-once')),
    lotId: id.optional(),
    receiptId: id.optional(),
    decision: z.enum(decisions),
    /** A weight that reads as all that is undecided is all of it. */
    weight: mass,
    reason: sentence(fault('why-decided')),
    basis: z.enum(releaseBases).optional(),
  })
  .refine(({ lotId, receiptId }) => (lotId === undefined) !== (receiptId === undefined), {
    path: ['lotId'],
    message: fault('lot-or-delivery'),
  })
  .refine(({ decision, basis }) => decision !== 'release' || basis !== undefined, {
    path: ['basis'],
    message: fault('release-stands-on'),
  })
  .refine(({ decision, basis }) => decision === 'release' || basis === undefined, {
    path: ['basis'],
    message: fault('basis-of-release-only'),
  })
  .refine(({ decision, lotId }) => decision !== 'return' || lotId === undefined, {
    path: ['decision'],
    message: fault('only-delivery-goes-back'),
  })
  .refine(({ decision, receiptId }) => (decision !== 'rework' && decision !== 'recall') || receiptId === undefined, {
    path: ['decision'],
    message: fault('only-lot-reworked'),
  });
export const recordDisposition = route({
  method: 'PUT',
  path: '/dispositions/:dispositionId',
  summary: 'Decide what becomes of so much of a product',
  roles: ['owner', 'reviewer'],
  body: dispositionFields,
  returns: deviation,
  problems: ['not-found', 'deviation-closed', 'wrong-product', 'all-decided', 'more-than-there-is', 'sent-differently'],
});
export const correctDisposition = route({
  method: 'PUT',
  path: '/disposition-corrections/:correctionId',
  summary: 'Correct a decision: the old one stays, struck through',
  roles: ['owner', 'reviewer'],
  body: z.object({
    amends: id,
    reason: sentence(fault('why-corrected')),
    disposition: dispositionFields,
  }),
  returns: deviation,
  problems: ['not-found', 'wrong-product', 'all-decided', 'more-than-there-is', 'still-in-use', 'already-amended', 'sent-differently'],
});
export const recordDestruction = route({
  method: 'PUT',
  path: '/destructions/:destructionId',
  summary: 'Record how and when condemned product was destroyed',
  roles: floor,
  body: z.object({ dispositionId: id, method: sentence(fault('how-destroyed')), takenAt: instant, ...amendment }),
  returns: z.object({ destructionId: z.string() }),
  problems: ['not-found', 'not-condemned', 'destroyed-already', 'reason-missing', 'already-amended', 'in-the-future', 'sent-differently'],
});
export const closeDeviation = route({
  method: 'PUT',
  path: '/deviation-closings/:closingId',
  summary: 'Close a deviation; the hold ends with the last one',
  roles: ['owner', 'reviewer'],
  body: z.object({ deviationId: id, note: words() }),
  returns: deviation,
  problems: ['not-found', 'actions-missing', 'product-undecided', 'deviation-closed', 'sent-differently'],
});
export const takeBackClosing = route({
  method: 'PUT',
  path: '/closings-taken-back/:takingBackId',
  summary: 'Take the closing of a deviation back: it is open again, and its holds with it',
  roles: ['owner', 'reviewer'],
  body: z.object({ closingId: id, reason: sentence(fault('why-taken-back')) }),
  returns: deviation,
  problems: ['not-found', 'taken-back-already', 'sent-differently'],
});
