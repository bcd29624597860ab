import { z } from 'zod';
import { amendment } from './corrections';
import { correctiveAction, correctiveActionForms } from './corrective-actions';
import { id, instant, madeBy, mass, massReply, sentence, words } from './fields';
import { substances } from './receiving';
import { criticalLimit } from './limits';
import { verdict } from './verdicts';
import { everyone, floor, route } from './route';
import { fault } from './fault';

/** Holding product longer decides nothing, so it is no decision. */
export const decisions = ['release', 'rework', 'condemn', 'return', 'recall'] as const;
export type Decision = (typeof decisions)[number];
export const releaseBases = ['process authority', 'test result', 'worked on and measured again', 'document on file'] as const;

/** Exactly one of lot and delivery is named. */
const whichProduct = { lotId: z.string().optional(), receiptId: z.string().optional(), code: z.string() };
const named = { deviationId: z.string(), number: z.number().int() };

/** `at` is when the person says it was destroyed. */
export const destruction = z.object({
  destructionId: z.string(),
  method: z.string(),
  by: z.string(),
  at: z.string(),
  recordedAt: z.string(),
});
/** What is voided is shown struck through. */
export const voiding = z.object({
  how: z.enum(['corrected', 'voided', 'taken back']),
  reason: z.string(),
  by: z.string(),
  at: z.string(),
});
export type Voiding = z.output<typeof voiding>;
const actionTaken = z.object({ actionId: z.string(), action: correctiveAction, made: madeBy });
const closing = z.object({ closingId: z.string(), note: z.string(), by: z.string(), at: z.string() });

/** A decision may speak for several deviations. */
export const disposition = z.object({
  dispositionId: z.string(),
  decision: z.enum(decisions),
  ...whichProduct,
  weight: massReply,
  reason: z.string(),
  /** Only of a release. */
  basis: z.enum(releaseBases).optional(),
  speaksFor: z.array(z.object(named)),
  by: z.string(),
  at: z.string(),
  /** Condemned or called back, held apart, and not yet destroyed. */
  toDestroy: z.boolean(),
  destruction: destruction.optional(),
  voidedDestructions: z.array(destruction.extend({ voided: voiding })),
  /** Another decision took its place, or its product is undecided again. */
  voided: voiding.optional(),
});
export type Disposition = z.output<typeof disposition>;

/** The first product is the one the deviation was opened on. */
export const productConcerned = z.object({
  ...whichProduct,
  what: z.string(),
  atStake: massReply,
  undecided: massReply,
  /** Neither taken into a lot nor shipped, condemned or sent back. */
  here: massReply,
  /** Shipped, and not called back. */
  left: massReply,
  /** Open deviations of the same product: one decision may speak for them too. */
  alsoOpen: z.array(z.object({ ...named, undecided: massReply })),
});
export type ProductConcerned = z.output<typeof productConcerned>;

export const deviation = z.object({
  ...named,
  lot: z.object({ lotId: z.string(), code: z.string(), productName: z.string() }).optional(),
  receipt: z.object({ receiptId: z.string(), code: z.string(), itemName: z.string() }).optional(),
  controlPoint: z
    .object({
      controlPointId: z.string(),
      kind: z.enum(['critical', 'prerequisite']),
      name: z.string(),
      hazard: z.string(),
      correctiveAction: z.string(),
    })
    .optional(),
  form: z.enum(correctiveActionForms),
  /** By the records of now, or of when it was closed. */
  description: z.string(),
  /** Named where no control point judges the substance. */
  substance: z.enum(substances).optional(),
  limit: criticalLimit.optional(),
  verdict: verdict.optional(),
  /** Present where the verdict has changed since. */
  openedWith: z.object({ description: z.string(), verdict }).optional(),
  /** True again when the decisions no longer cover what the deviation concerns. */
  open: z.boolean(),
  opened: madeBy,
  /** A possible recall. */
  shippedAlready: z.boolean(),
  /** In the 90 days before, newest first. */
  recurrence: z.array(z.object({ ...named, openedAt: z.string(), description: z.string(), code: z.string() })),
  actions: z.array(actionTaken),
  /** Oldest first. */
  voidedActions: z.array(actionTaken.extend({ voided: voiding })),
  atStake: massReply,
  undecided: massReply,
  /** A hundredth may stay undecided, because scales do not add up. */
  covered: z.boolean(),
  products: z.array(productConcerned),
  dispositions: z.array(disposition),
  closing: closing.optional(),
  closingsTakenBack: z.array(closing.extend({ takenBack: voiding })),
});
export type Deviation = z.output<typeof deviation>;

export const listDeviations = route({
  method: 'GET',
  path: '/deviations',
  summary: 'Deviations, open ones first',
  roles: everyone,
  query: z.object({ open: z.enum(['only', 'all']).default('all'), lotId: id.optional() }),
  returns: z.object({ deviations: z.array(deviation) }),
  problems: [],
});
export const showDeviation = route({
  method: 'GET',
  path: '/deviations/:deviationId',
  summary: 'One deviation',
  roles: everyone,
  returns: deviation,
  problems: ['not-found'],
});
export const openDeviation = route({
  method: 'PUT',
  path: '/deviations/:deviationId',
  summary: 'Open a deviation by hand: something unforeseen, or a control point that stays undetermined',
  roles: floor,
  body: z.object({
    lotId: id,
    controlPointId: id.optional(),
    /** Named where no control point judges the substance. */
    substance: z.enum(substances).optional(),
    description: sentence(fault('what-was-seen')),
    takenAt: instant,
  }),
  returns: deviation,
  problems: ['not-found', 'no-such-control-point', 'in-the-future', 'sent-differently'],
});
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
