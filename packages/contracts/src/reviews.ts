import { z } from 'zod';
import { account } from './account';
import { id, sentence } from './fields';
import { lot } from './lots';
import { everyone, route } from './route';
import { fault } from './fault';

/** A finding with `blocks` keeps the lot from being cleared. */
const finding = z.object({
  about: z.enum(['control-point', 'deviation', 'input', 'weighing', 'weight', 'shipment', 'entry']),
  kind: z.enum(['missing', 'undetermined', 'missed', 'open', 'flagged', 'settled', 'met']),
  what: account,
  /** What to do about it. */
  next: account.optional(),
  blocks: z.boolean(),
  controlPointId: z.string().optional(),
  deviationId: z.string().optional(),
});
export type Finding = z.output<typeof finding>;

const whyNotSign = ['a-reviewer-signs', 'made-records-of-it', 'still-missing-or-open'] as const;

export const showReview = route({
  method: 'GET',
  path: '/lots/:lotId/review',
  summary: 'What the pre-shipment review of a lot finds',
  roles: everyone,
  returns: z.object({
    lot,
    findings: z.array(finding),
    ready: z.boolean(),
    /** Of the person who asks. */
    maySign: z.boolean(),
    whyNot: z.enum(whyNotSign).optional(),
    soleWorker: z.boolean(),
    recordedBy: z.array(z.string()),
  }),
  problems: ['not-found'],
});
export const signReview = route({
  method: 'PUT',
  path: '/reviews/:reviewId',
  summary: 'Sign the pre-shipment review (9 CFR 417.5(c)); the lot is cleared to ship',
  roles: ['owner', 'reviewer'],
  body: z.object({ lotId: id, statement: sentence(fault('write-what-you-sign')) }),
  returns: z.object({ reviewId: z.string(), lotId: z.string() }),
  problems: ['not-found', 'review-incomplete', 'own-records', 'sent-differently'],
});
export const takeBackReview = route({
  method: 'PUT',
  path: '/reviews-taken-back/:takingBackId',
  summary: 'Take a review back, by whoever signed it or the owner: the lot is cleared no more',
  roles: ['owner', 'reviewer'],
  body: z.object({ reviewId: id, reason: sentence(fault('why-taken-back')) }),
  returns: z.object({ takingBackId: z.string() }),
  problems: ['not-found', 'taken-back-already', 'sent-differently'],
});
