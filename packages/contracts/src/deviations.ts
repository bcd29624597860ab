import { z } from 'zod';
import { amendment } from './corrections';
import { correctiveAction, correctiveActionForms } from './corrective-actions';
import { id, instant, madeBy, mass, massReply, sentence, words } from './fields';
import { substances } from './receiving';
import { criticalLimit } from './limits';
import { verdict } from './verdicts';
import { everyone, floor, route } from './route';
import { fault } from './fault';

/** What can become of product. Holding it longer decides nothing, so it is none of them. */
export const decisions = ['release', 'rework', 'condemn', 'return', 'recall'] as const;
export type Decision = (typeof decisions)[number];
/** What a release may stand on. */
export const releaseBases = ['process authority', 'test result', 'worked on and measured again', 'document on file'] as const;

/** A lot or a delivery, of which exactly one is named. */
const whichProduct = { lotId: z.string().optional(), receiptId: z.string().optional(), code: z.string() };
/** A deviation as others name it. */
const named = { deviationId: z.string(), number: z.number().int() };

/** Destroyed at `at`, as the person said it; kept at `recordedAt`. */
export const destruction = z.object({
  destructionId: z.string(),
  method: z.string(),
  by: z.string(),
  at: z.string(),
  recordedAt: z.string(),
});
/** That something recorded counts no more: how that came, why, by whom and when. It is shown struck through. */
export const voiding = z.object({
  how: z.enum(['corrected', 'voided', 'taken back']),
  reason: z.string(),
  by: z.string(),
  at: z.string(),
});
export type Voiding = z.output<typeof voiding>;
const actionTaken = z.object({ actionId: z.string(), action: correctiveAction, made: madeBy });
const closing = z.object({ closingId: z.string(), note: z.string(), by: z.string(), at: z.string() });

/** One decision about so much of one product; it may speak for several deviations. */
export const disposition = z.object({
  dispositionId: z.string(),
  decision: z.enum(decisions),
  ...whichProduct,
  weight: massReply,
  reason: z.string(),
  /** Of a release: what it stands on. */
  basis: z.enum(releaseBases).optional(),
  /** Every deviation it speaks for. */
  speaksFor: z.array(z.object(named)),
  by: z.string(),
  at: z.string(),
  /** Condemned or called back, and not yet destroyed: it is held apart. */
  toDestroy: z.boolean(),
  destruction: destruction.optional(),
  /** Records of its destruction that count no more. */
  voidedDestructions: z.array(destruction.extend({ voided: voiding })),
  /** The decision counts no more: another took its place, or its product is undecided again. */
  voided: voiding.optional(),
});
export type Disposition = z.output<typeof disposition>;

/** A lot or a delivery with product that a deviation concerns; the first is the one it was opened on. */
export const productConcerned = z.object({
  ...whichProduct,
  what: z.string(),
  atStake: massReply,
  undecided: massReply,
  /** Neither taken into a lot nor shipped, condemned or sent back. */
  here: massReply,
  /** Shipped, and not called back. */
  left: massReply,
  /** The other open deviations of the same product: one decision may speak for them too. */
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
  /** Which corrective action it asks for. */
  form: z.enum(correctiveActionForms),
  /** What is missed, in a sentence and as a verdict, by the records of now; of one that is closed, as it was when closed. */
  description: z.string(),
  /** The restricted substance it is about, where no control point judges it. */
  substance: z.enum(substances).optional(),
  limit: criticalLimit.optional(),
  verdict: verdict.optional(),
  /** What it was opened with, where that has changed since: it stays on the record. */
  openedWith: z.object({ description: z.string(), verdict }).optional(),
  /** Until it is closed, and again when its decisions no longer cover what it concerns. */
  open: z.boolean(),
  opened: madeBy,
  /** Product was shipped before the deviation was found: a possible recall. */
  shippedAlready: z.boolean(),
  /** Earlier deviations of the same control point in the 90 days before it, the newest first. */
  recurrence: z.array(z.object({ ...named, openedAt: z.string(), description: z.string(), code: z.string() })),
  actions: z.array(actionTaken),
  /** What was written about it and counts no more, oldest first. */
  voidedActions: z.array(actionTaken.extend({ voided: voiding })),
  atStake: massReply,
  undecided: massReply,
  /** The decisions cover what it concerns; scales that do not add up leave a hundredth. */
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
    /** The restricted substance it is about, where no control point judges it. */
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
    /** Every deviation it speaks for; all must be open and stand on the product. */
    deviationIds: z
      .array(id)
      .min(1, fault('one-deviation-at-least'))
      .max(50)
      .refine((ids) => new Set(ids).size === ids.length, fault('each-deviation-once')),
    lotId: id.optional(),
    receiptId: id.optional(),
    decision: z.enum(decisions),
    /** Read to the thousandth as all that is undecided, it is all of it. */
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
